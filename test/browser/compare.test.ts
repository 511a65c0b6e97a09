import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Calibration } from '../../daemon/contract/calibration.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

const minute = 60_000;

needs('chromium')('sensors in one closed box over night, by the forms alone', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];
  const end = Math.floor(Date.now() / minute) * minute - minute;

  beforeAll(async () => {
    daemon = await runDaemon();
    for (const [i, sensor] of ['node-1', 'node-2', 'node-3', 'node-4'].entries()) {
      const readings = Array.from({ length: 61 }, (_, n) => ({
        at: end - (60 - n) * 10 * minute,
        value: 15 + ([0.1, -0.1, 0, 2.2][i] ?? 0) + 0.02 * Math.sin(n + i),
      }));
      await daemon.publish(sensor, 'air-temperature', readings);
    }
    browser = await launchBrowser();
    page = await openPage(browser, screens.phone, { faults });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const panel = () => page.getByRole('region', { name: 'Compare sensors' });

  it('names the odd one out and offers offsets', async () => {
    await page.goto(`${daemon.page}/#/setup`);
    await panel().getByRole('checkbox', { name: 'node-4' }).waitFor();
    await panel().getByRole('button', { name: 'Compare', exact: true }).click();
    await panel().getByText('node-4 is the odd one out: 2.2 K above the others.').waitFor();
    await panel()
      .getByRole('row', { name: /node-4 odd one out/ })
      .waitFor();
  });

  it('takes the offsets with one press, and the readings stay as they were sent', async () => {
    const offered = panel().getByRole('group', { name: 'Whose offsets to take' });
    expect(await offered.getByRole('checkbox', { name: 'node-4' }).isChecked()).toBe(true);
    await panel().getByRole('button', { name: 'Take these offsets' }).click();
    await panel()
      .getByText(/offsets? holds? from the end of the comparison on/)
      .waitFor();
    const [taken] = await daemon.call<Calibration[]>('GET', 'sensors/node-4/calibrations');
    expect(taken?.add).toBeCloseTo(-2.2, 1);
    await daemon.publish('node-4', 'air-temperature', [{ value: 17.2, at: Date.now() }]);
    const sensor = await daemon.call<Sensor>('GET', 'sensors/node-4');
    expect(sensor.latest[0]?.raw).toBe(17.2);
    expect(sensor.latest[0]?.value).toBeCloseTo(15, 1);
  });

  it('shows the calibration at its sensor, takes a hand meter’s figure, and lets it be withdrawn', async () => {
    const sensors = page.getByRole('region', { name: 'Sensors' });
    await sensors.getByText('Calibrate node-4').click();
    await sensors.getByText(/Air temperature: offset, −2\.\d+ K/).waitFor();
    await sensors.getByLabel('The hand meter shows').fill('14,8');
    await sensors.getByRole('button', { name: 'Calibrate', exact: true }).click();
    await sensors.getByText(/Air temperature: a hand meter beside it/).waitFor();
    await sensors.getByRole('button', { name: 'Withdraw it' }).first().click();
    await sensors.getByText('1 earlier calibration kept').waitFor();
    expect(faults).toEqual([]);
  });

  it('lets what was entered be corrected, also from when on it holds, and keeps what it was', async () => {
    const sensors = page.getByRole('region', { name: 'Sensors' });
    await sensors.getByText('Correct it').click();
    // Its form opens above the one for a new calibration, whose fields have the same names.
    await sensors.getByRole('button', { name: 'Keep the correction' }).waitFor();
    await sensors.getByLabel('The hand meter shows').first().fill('14,6');
    await sensors.getByLabel('Holds').first().selectOption({ label: 'from a moment on' });
    await sensors.getByLabel('From when').fill('2026-01-05T06:30');
    await sensors.getByLabel('Note, if any').first().fill('misread the hand meter');
    await sensors.getByRole('button', { name: 'Keep the correction' }).click();
    await sensors.getByText(/misread the hand meter/).waitFor();
    await sensors.getByText('2 earlier calibrations kept').waitFor();
    const all = await daemon.call<Calibration[]>('GET', 'sensors/node-4/calibrations');
    const [standing] = all.filter(({ replacedAt }) => replacedAt === null);
    expect(standing?.how).toMatchObject({ kind: 'hand-meter', actual: 14.6 });
    // The browser has a time zone of its own.
    const meant = await page.evaluate(() => new Date(2026, 0, 5, 6, 30).toISOString());
    expect(standing?.from).toBe(meant);
  });

  it('says what is wrong with a figure at its field', async () => {
    const sensors = page.getByRole('region', { name: 'Sensors' });
    await sensors.getByLabel('Against what').selectOption({ label: 'Offset' });
    await sensors.getByRole('button', { name: 'Calibrate', exact: true }).click();
    await sensors.getByRole('alert').waitFor();
    expect(await sensors.getByLabel('Add to what it sends').getAttribute('aria-invalid')).toBe(
      'true',
    );
  });
});
