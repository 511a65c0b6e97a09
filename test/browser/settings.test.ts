import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { SettingList } from '../../daemon/contract/setting.ts';
import { needs } from '../house/needs.ts';
import { violations } from './axe.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

needs('chromium')('settings that are changed on their page', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  let batch: Batch;
  const faults: string[] = [];

  beforeAll(async () => {
    daemon = await runDaemon();
    // By then sanding is more likely than not, and not sure: 48 to 72 h at 20 °C to recoat is common
    // practice, no source, and a tenth more to sand an assumption.
    ({ batch } = await rackWithCoat(daemon, 'North rack', 70));
    browser = await launchBrowser();
    page = await openPage(browser, screens.phone, { faults });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const entry = (on: Page, name: string) =>
    on.locator('details.setting').filter({ has: on.getByText(name, { exact: true }) });

  async function open(on: Page, section: string, name: string) {
    await on.goto(`${daemon.page}/#/settings/${section}`);
    await entry(on, name).locator('summary').click();
    await on.getByRole('button', { name: `Change ${name}` }).click();
    return entry(on, name);
  }

  const verdict = async () => {
    const { coats } = await daemon.call<Batch>('GET', `batches/${batch.id}`);
    return coats[0]?.gates.sand.verdict;
  };

  it('say what is wrong beside the field, and change nothing', async () => {
    const form = await open(page, 'cure', 'cure.readyAt');
    const field = form.getByLabel('From now on');
    expect(await field.evaluate((one) => one === document.activeElement)).toBe(true);
    await field.fill('3');
    await field.press('Enter');
    await form.getByText('must be at most 0.99').first().waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await violations(page)).toEqual([]);
    expect(await verdict()).toBe('test');
    faults.length = 0;
  });

  it('hold at once: the batch at another page is ready, and another tab shows the setting', async () => {
    const [tab, board] = await Promise.all([
      openPage(browser, screens.tablet, { faults }),
      openPage(browser, screens.phone, { faults }),
    ]);
    await tab.goto(`${daemon.page}/#/settings/changed`);
    await tab.getByRole('heading', { name: 'Not at their defaults' }).waitFor();
    await board.goto(`${daemon.page}/#/batch/${batch.id}`);
    const sanding = board.locator('li.job', { has: board.getByRole('heading', { name: 'Sand' }) });
    await sanding.getByText('Feel it', { exact: true }).waitFor();
    const form = entry(page, 'cure.readyAt');
    await form.getByLabel('From now on').fill('0,55');
    await form.getByRole('button', { name: 'Keep it' }).click();
    await form.getByText('Kept. It holds now.').waitFor();
    const opener = page.getByRole('button', { name: 'Change cure.readyAt' });
    expect(await opener.evaluate((one) => one === document.activeElement)).toBe(true);
    await entry(tab, 'cure.readyAt').getByText('chosen here', { exact: true }).waitFor();
    await sanding.getByText('Ready', { exact: true }).waitFor();
    await Promise.all([tab.context().close(), board.context().close()]);
  });

  it('go back to what the file or the default says', async () => {
    await page.getByRole('button', { name: 'Change cure.readyAt' }).click();
    await page.getByRole('button', { name: 'Back to the default: 0.9' }).click();
    await entry(page, 'cure.readyAt').getByText('the default', { exact: true }).waitFor();
    expect(await verdict()).toBe('test');
  });

  it('wait for the next start where only that brings them in, and hold then', async () => {
    const form = await open(page, 'work', 'work.days');
    await form.getByRole('checkbox', { name: 'Saturday' }).check();
    await form.getByRole('button', { name: 'Keep it' }).click();
    await form
      .getByText('from the next start on it is mon · tue · wed · thu · fri · sat')
      .waitFor();
    await daemon.kill();
    await daemon.restart();
    await page.reload();
    await entry(page, 'work.days').getByText('chosen here', { exact: true }).waitFor();
    const { settings } = await daemon.call<SettingList>('GET', 'settings');
    expect(settings.find(({ name }) => name === 'work.days')).toMatchObject({
      ...{ value: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat'], waits: false, from: 'chosen' },
    });
  });

  it('are closed by Escape, and told where they are not changed here', async () => {
    await open(page, 'trade', 'trade.stockLengthsMm');
    await page.keyboard.press('Escape');
    const opener = page.getByRole('button', { name: 'Change trade.stockLengthsMm' });
    expect(await opener.getAttribute('aria-expanded')).toBe('false');
    expect(await opener.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.goto(`${daemon.page}/#/settings/http`);
    await entry(page, 'http.port').locator('summary').click();
    await entry(page, 'http.port')
      .getByText(/given at the start by --http/)
      .waitFor();
    await entry(page, 'http.tls').locator('summary').click();
    await entry(page, 'http.tls')
      .getByText(/changed in the file on the computer itself, and not here/)
      .waitFor();
    // While the daemon was away the browser said so of each request.
    expect(faults.filter((fault) => !fault.includes('ERR_'))).toEqual([]);
  });
});
