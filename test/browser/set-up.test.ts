import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch, BatchSummary } from '../../daemon/contract/batch.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

needs('chromium')('from an empty shed to the first touch test, by the forms alone', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    page = await openPage(browser, screens.phone, { faults });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const panel = (name: string) => page.getByRole('region', { name });

  it('leads from the bare wall to the set-up', async () => {
    await page.goto(`${daemon.page}/`);
    await page.getByRole('heading', { name: 'The wall is bare' }).waitFor();
    const foot = page.getByRole('contentinfo');
    expect(await foot.textContent()).toContain('Oily rags can catch fire by themselves.');
    await page.getByRole('link', { name: 'Set up' }).last().click();
    await page.getByRole('heading', { name: 'A new place' }).waitFor();
  });

  it('shows what is wrong at the field where it is wrong, and records nothing', async () => {
    const form = panel('A new batch');
    await form.getByLabel('Boards', { exact: true }).fill('many');
    await form.getByRole('button', { name: 'Start the batch' }).click();
    await form.getByRole('alert').waitFor();
    for (const label of ['Name', 'Boards']) {
      const field = form.getByLabel(label, { exact: true });
      expect(await field.getAttribute('aria-invalid'), label).toBe('true');
    }
    expect(await form.getByRole('alert').textContent()).toMatch(/Look at the marked fields/);
    expect(await daemon.call('GET', 'batches')).toEqual([]);
    // The browser itself remarks on the refused request; nothing else may be wrong.
    expect(faults.filter((fault) => !fault.includes('status of 400'))).toEqual([]);
    faults.length = 0;
  });

  it('makes a room with its volume and a rack in it', async () => {
    const form = panel('A new place');
    await form.getByRole('radio', { name: 'Room' }).check();
    await form.getByLabel('Name').fill('Paint room');
    await form.getByLabel('Length').fill('6');
    await form.getByLabel('Width').fill('4,5');
    await form.getByLabel('Height').fill('3');
    await form.getByRole('button', { name: 'Make the place' }).click();
    await form.getByText('Made: Paint room.').waitFor();
    await form.getByRole('radio', { name: 'Rack' }).check();
    await form.getByLabel('Name').fill('North rack');
    await form.getByLabel('In which room').selectOption({ label: 'Paint room' });
    await form.getByRole('button', { name: 'Make the place' }).click();
    await form.getByText('Made: North rack.').waitFor();
    const places = await daemon.call<{ name: string; within: string | null; volumeM3: number }[]>(
      'GET',
      'places',
    );
    const [room, rack] = ['Paint room', 'North rack'].map((name) =>
      places.find((place) => place.name === name),
    );
    expect(room?.volumeM3).toBeCloseTo(81, 9);
    expect(rack?.within).toBe((room as { id?: string } | undefined)?.id);
  });

  it('shows a sensor by itself and takes where it hangs', async () => {
    const now = Date.now();
    await daemon.publish('probe-7', 'air-temperature', [{ value: 18.2, at: now }]);
    const list = panel('Sensors');
    await list.getByRole('heading', { name: 'probe-7' }).waitFor();
    await list.getByLabel('Where probe-7 hangs').selectOption({ label: 'North rack' });
    // Readings go on coming in while someone chooses; the choice must stay.
    await daemon.publish('probe-7', 'air-temperature', [{ value: 18.4, at: now + 1000 }]);
    await list.getByText('18.4 °C').waitFor();
    await list.getByRole('button', { name: 'Place it' }).click();
    await list.getByText('1 sensor hangs where it should').waitFor();
    const [sensor] = await daemon.call<Sensor[]>('GET', 'sensors');
    expect(sensor?.placeId).not.toBeNull();
  });

  it('starts a batch and goes to its page', async () => {
    const form = panel('A new batch');
    await form.getByLabel('Name', { exact: true }).fill('South gable');
    await form.getByLabel('Where the boards lie').selectOption({ label: 'North rack' });
    await form.getByLabel('Timber').selectOption({ label: 'Norway spruce' });
    await form.getByLabel('Boards', { exact: true }).fill('24');
    await form.getByLabel('Length').fill('4200');
    await form.getByLabel('Width').fill('145');
    await form.getByLabel('Thickness').fill('22');
    await form.getByRole('button', { name: 'Start the batch' }).click();
    await page.getByRole('heading', { name: 'South gable', level: 1 }).waitFor();
    await page.getByText('Bare', { exact: true }).waitFor();
  });

  it('records a coat and then speaks of the rags before anything else', async () => {
    await page.getByRole('button', { name: 'Record the first coat' }).click();
    await page.getByRole('button', { name: 'Record this coat' }).click();
    const rags = page.getByRole('heading', { name: 'The rags, now' });
    await rags.waitFor();
    await page.getByText(/under water in a metal can with a lid/).waitFor();
    await page.getByRole('button', { name: 'The rags are seen to' }).click();
    await rags.waitFor({ state: 'detached' });
    await page.getByText(/Coat 1 of 3, Primer/).waitFor();
  });

  it('records a touch test in two taps', async () => {
    await page.getByRole('button', { name: 'I felt it' }).click();
    const notYet = page.getByRole('button', { name: /^Not yet/ });
    await notYet.waitFor();
    // The answer is under the thumb, on a phone too: nobody has to look for it.
    const box = await notYet.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(screens.phone.height);
    await notYet.click();
    await page.getByText(/^Recorded: felt whether it is ready to coat again; not yet\.$/).waitFor();
    await page.getByRole('listitem').filter({ hasText: 'Not yet ready to coat again' }).waitFor();
  });

  it('records a remark, the figures of a hand meter and a move', async () => {
    await page.getByRole('button', { name: 'Remark' }).click();
    await page.getByRole('radio', { name: 'Runs' }).check();
    await page.getByLabel('In your words').fill('two boards at the lower end');
    await page.getByRole('button', { name: 'Record the remark' }).click();
    await page.getByText('Runs: two boards at the lower end').waitFor();

    await page.getByRole('button', { name: 'Hand meter' }).click();
    for (const [board, value] of [13.1, 12.8, 14, 13.5, 12.9].entries()) {
      await page.getByLabel(`Board ${board + 1}`).fill(String(value).replace('.', ','));
    }
    await page.getByRole('button', { name: 'Record the figures' }).click();
    await page.getByText('Wood moisture: 13.1 % · 12.8 % · 14 % · 13.5 % · 12.9 %').waitFor();

    await page.getByRole('button', { name: 'Moved' }).click();
    await page.getByLabel('To', { exact: true }).selectOption({ label: 'Paint room' });
    await page.getByRole('button', { name: 'Record the move' }).click();
    await page.getByText('Moved to Paint room').waitFor();
  });

  it('closes the batch, which then leaves the wall', async () => {
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('button', { name: 'Close it' }).click();
    await page.getByText('The batch is closed.').waitFor();
    const [summary] = await daemon.call<BatchSummary[]>('GET', 'batches');
    expect(summary?.closed).toBe(true);
    const batch = await daemon.call<Batch>('GET', `batches/${summary?.id}`);
    expect(batch.coats).toHaveLength(1);
    expect(batch.tests).toHaveLength(1);
    expect(batch.handReadings[0]?.values).toEqual([13.1, 12.8, 14, 13.5, 12.9]);
    expect(faults).toEqual([]);
  });

  it('shows its forms closed, with the reason, to who may only look', async () => {
    const looker = await openPage(browser, screens.desk, {
      extraHTTPHeaders: { 'x-forwarded-for': '192.0.2.7' },
    });
    await looker.goto(`${daemon.page}/#/setup`);
    await looker
      .getByText(/Changes are only taken from the computer itself/)
      .first()
      .waitFor();
    expect(await looker.getByRole('button', { name: 'Start the batch' }).isDisabled()).toBe(true);
    await looker.context().close();
  });
});
