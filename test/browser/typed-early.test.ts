import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { furnish } from './all-pages.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

/*
 * The faults injected: an answer that a form goes by comes late, or another device changes what it begins
 * with, while somebody fills it in.
 */
needs('chromium')('what is filled in early stays', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    daemon = await runDaemon();
    await furnish(daemon);
    browser = await launchBrowser();
  });
  beforeEach(async () => {
    page = await openPage(browser, screens.desk);
  });
  afterEach(async () => {
    await page.context().close();
  });
  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  /** Holds back answers until it is called. */
  async function held(...paths: string[]): Promise<() => void> {
    let release = () => {};
    const released = new Promise<void>((resolve) => {
      release = resolve;
    });
    for (const path of paths) {
      await page.route(`**/api/v1/${path}`, async (route) => {
        await released;
        await route.continue();
      });
    }
    return release;
  }
  const batchForm = () => page.getByRole('region', { name: 'A new batch' });
  const values = (labels: readonly string[]) =>
    Promise.all(labels.map((label) => batchForm().getByLabel(label, { exact: true }).inputValue()));
  /** Shown as soon as the batches are known, and not before. */
  const batches = () => page.getByRole('link', { name: 'Boards of South rack' });
  async function comes(release: () => void): Promise<void> {
    expect(await batches().count()).toBe(0);
    release();
    await batches().waitFor();
  }

  it('when batches, plans and the trade’s sizes come after it was typed', async () => {
    const release = await held('batches', 'plans', 'trade');
    await page.goto(`${daemon.page}/#/setup`);
    const typed = { Name: 'West wall', Boards: '7', Length: '3900', Width: '120', Thickness: '19' };
    for (const [label, text] of Object.entries(typed)) {
      await batchForm().getByLabel(label, { exact: true }).fill(text);
    }
    await batchForm().getByLabel('Timber').selectOption({ label: 'larch' });
    await comes(release);
    await batchForm().getByRole('button', { name: '22 × 145' }).waitFor();
    expect(await values(Object.keys(typed))).toEqual(Object.values(typed));
    const timber = batchForm().getByLabel('Timber').locator('option:checked');
    expect(await timber.textContent()).toBe('larch');
  });

  it('when the batches come after a size was tapped', async () => {
    const release = await held('batches');
    await page.goto(`${daemon.page}/#/setup`);
    await batchForm().getByRole('button', { name: '5.4 m' }).click();
    await comes(release);
    expect(await values(['Length'])).toEqual(['5400']);
  });

  it('when another device makes a rack meanwhile', async () => {
    await page.goto(`${daemon.page}/#/first-run/rack`);
    await page.getByLabel('Name', { exact: true }).fill('By the window');
    await daemon.call('POST', 'places', { name: 'Elsewhere', kind: 'rack' });
    await page.getByText(/There already: .*Elsewhere/).waitFor();
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('By the window');
  });

  it('when the rack before it is still on its way, which else begins the form anew', async () => {
    await page.goto(`${daemon.page}/#/first-run/rack`);
    const name = page.getByLabel('Name', { exact: true });
    const make = page.getByRole('button', { name: 'Make the rack' });
    const usual = await name.inputValue();
    await make.click();
    await page.getByText(new RegExp(`There already: .*${usual}`)).waitFor();
    await page.waitForFunction(
      (before) => document.querySelector<HTMLInputElement>('[name="name"]')?.value !== before,
      usual,
    );
    const release = await held('places');
    await name.fill('First');
    await make.click();
    await name.fill('Second');
    release();
    await page.getByText(/There already: .*First/).waitFor();
    expect(await name.inputValue()).toBe('Second');
  });
});
