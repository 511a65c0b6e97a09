import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { allPages, furnish } from './all-pages.ts';
import { violations } from './axe.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

needs('chromium')(
  'every page is open to everyone (WCAG 2 A and AA, as far as axe can tell)',
  () => {
    let daemon: RunningDaemon;
    let browser: Browser;
    let batchId: string;

    beforeAll(async () => {
      daemon = await runDaemon();
      browser = await launchBrowser();
      ({ batchId } = await furnish(daemon));
    });

    afterAll(async () => {
      await browser?.close();
      await daemon?.close();
    });

    // Light and width have nothing to do with each other, so each of both is looked at once.
    for (const [colorScheme, screen] of [
      ['light', 'desk'],
      ['dark', 'phone'],
    ] as const) {
      for (const { name, path, ready } of allPages) {
        it(`${name}, ${colorScheme}, ${screen}`, async () => {
          const page = await openPage(browser, screens[screen], { colorScheme });
          await page.goto(`${daemon.page}/${path(batchId)}`);
          await page.getByText(ready).first().waitFor();
          expect(await violations(page)).toEqual([]);
          await page.context().close();
        });
      }

      it(`each form of the batch page, ${colorScheme}`, async () => {
        const page = await openPage(browser, screens.phone, { colorScheme });
        await page.goto(`${daemon.page}/#/batch/${batchId}`);
        for (const form of [
          'I felt it',
          'Record a coat',
          'Moved',
          'Remark',
          'Photo',
          'Hand meter',
          'Close',
        ]) {
          await page.getByRole('button', { name: form, exact: true }).click();
          expect(await violations(page), form).toEqual([]);
        }
        await page.getByRole('button', { name: 'Record a coat' }).click();
        await page.getByRole('radio', { name: 'At another time' }).check();
        await page.getByText('Paint used, colour, tin, faces').click();
        expect(await violations(page), 'record a coat, unfolded').toEqual([]);
        await page.context().close();
      });
    }

    it('a label that is missing would be seen: the check can fail', async () => {
      const page = await openPage(browser, screens.desk);
      await page.goto(`${daemon.page}/#/setup`);
      await page.getByText('probe-7').first().waitFor();
      await page.evaluate(() => document.querySelector('.field label')?.remove());
      expect((await violations(page)).join()).toMatch(/^label:/);
      await page.context().close();
    });
  },
);
