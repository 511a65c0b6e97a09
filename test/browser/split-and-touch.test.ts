import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch, BatchSummary } from '../../daemon/contract/batch.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

needs('chromium')('at the rack, with one thumb', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  let batch: Batch;
  const faults: string[] = [];

  beforeAll(async () => {
    daemon = await runDaemon();
    ({ batch } = await rackWithCoat(daemon, 'North rack', 50));
    await daemon.call('POST', 'places', { name: 'South wall', kind: 'wall', facing: 'south' });
    browser = await launchBrowser();
    page = await openPage(browser, screens.phone, { faults });
    await page.goto(`${daemon.page}/#/batch/${batch.id}`);
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('a touch test is two taps, asks whether the boards are still there, and says what it changed', async () => {
    await page.getByRole('button', { name: 'I felt it' }).click();
    await page.getByText('Still there?').waitFor();
    await page.getByRole('button', { name: /^It is/ }).click();
    const said = page.getByRole('region', { name: 'What to record' }).getByRole('status');
    await said.getByText('Recorded').waitFor();
    await said.getByRole('listitem').first().waitFor();
    expect(await said.textContent()).toMatch(/became “(?:Ready|Held)”|moved from|chance went/);
  });

  it('some boards are split off and go up, and the lines of the day are ticked', async () => {
    await page.getByRole('button', { name: 'Some went' }).click();
    await page.getByLabel(/How many/).fill('8');
    await page.getByLabel('Went to').selectOption({ label: 'South wall' });
    await page.getByRole('button', { name: 'Split them off' }).click();
    await page.getByRole('heading', { name: /, 8 boards$/ }).waitFor();
    const going = page.getByRole('region', { name: 'Going up' });
    await going.getByRole('button', { name: /Nail heads/ }).click();
    await going.getByRole('button', { name: /Nail heads/, pressed: true }).waitFor();
    const batches = await daemon.call<BatchSummary[]>('GET', 'batches');
    expect(batches.map(({ boards }) => boards.count)).toEqual([16, 8]);
    expect(faults).toEqual([]);
  });
});
