import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

needs('chromium')('what comes, what became of it, and photos', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batchId: string;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    ({
      batch: { id: batchId },
    } = await rackWithCoat(daemon, 'North rack', 30));
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('a plan has a strip, a table that says the same, and an answer for more boards', async () => {
    const page = await openPage(browser, screens.desk);
    await page.goto(`${daemon.page}/#/ahead`);
    const strip = page.locator('.timeline-row');
    await strip.first().waitFor();
    const words = await strip.first().locator('.timeline-word').allTextContents();
    const jobs = page.locator('.step-table tbody').first().locator('tr:not(.step-batch) th');
    expect(await jobs.allTextContents()).toEqual(words);
    await page.getByLabel(/Further boards/).fill('120');
    await page.getByRole('button', { name: 'When would they be done?' }).click();
    await page.getByText('The boards you asked about').first().waitFor();
    await page.getByLabel(/Further boards/).fill('many');
    await page.getByRole('button', { name: 'When would they be done?' }).click();
    await page.locator('.field', { has: page.locator('[aria-invalid="true"]:focus') }).waitFor();
    await page.getByText(/whole number/).waitFor();
    await page.context().close();
  });

  it('a photo is made smaller, kept, and printed in the report', async () => {
    const page = await openPage(browser, screens.phone);
    await page.goto(`${daemon.page}/#/batch/${batchId}`);
    await page.getByRole('button', { name: 'Photo', exact: true }).click();
    const large = await page.evaluate(async () => {
      const canvas = document.createElement('canvas');
      canvas.width = 4000;
      canvas.height = 1000;
      const brush = canvas.getContext('2d');
      if (brush) {
        brush.fillStyle = '#7d2c20';
        brush.fillRect(0, 0, 4000, 1000);
      }
      return canvas.toDataURL('image/png').split(',')[1] ?? '';
    });
    await page.getByLabel('Photo', { exact: true }).setInputFiles({
      name: 'board.png',
      mimeType: 'image/png',
      buffer: Buffer.from(large, 'base64'),
    });
    await page.getByLabel('What it shows').fill('A knot at the end');
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    await page.getByText('The photo is kept').waitFor();
    await page.getByRole('link', { name: /The report of this batch/ }).click();
    const picture = page.getByRole('img', { name: 'A knot at the end' });
    await picture.waitFor();
    await page.waitForFunction(() => [...document.images].every((image) => image.complete));
    const width = await picture.evaluate((image) => (image as HTMLImageElement).naturalWidth);
    expect(width).toBe(1600);
    await page.context().close();
  });

  it('a file that is no photo is named', async () => {
    const page = await openPage(browser, screens.phone);
    await page.goto(`${daemon.page}/#/batch/${batchId}`);
    await page.getByRole('button', { name: 'Photo', exact: true }).click();
    await page
      .getByLabel('Photo', { exact: true })
      .setInputFiles({ name: 'list.txt', mimeType: 'text/plain', buffer: Buffer.from('boards') });
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    await page.getByText(/no photo that this device can read/).waitFor();
    await page.context().close();
  });
});
