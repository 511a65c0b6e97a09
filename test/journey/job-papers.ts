import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FastifyInstance } from 'fastify';
import type { Page } from 'playwright-core';
import { expect, onTestFinished } from 'vitest';
import { launchBrowser, openPage, screens } from '../browser/browser.ts';
import { colourCounts } from '../browser/colour-counts.ts';
import { decoded } from '../browser/read-code.ts';
import { mustSkip, programPath } from '../house/needs.ts';

const built = fileURLToPath(new URL('../../.build', import.meta.url));
export const dashboardFolder = join(built, 'dashboard');
/** Made anew by each run, for people to look at. */
const picturesFolder = join(built, 'pictures');

/** What of the page is the document itself. */
const sheets = {
  label: '.label',
  strip: 'svg.strip',
  rack: '.rack-card',
  door: '.door-card',
  ahead: 'main',
  report: 'main',
  season: 'main',
} as const;
type PaperName = keyof typeof sheets;

/**
 * A browser that looks at the documents of a site as people would, and keeps a picture of each.
 * A page that complains fails the test. Where the machine has no browser nothing is looked at, and
 * that is said out loud.
 */
export async function openPapers(app: FastifyInstance) {
  const missing = programPath('chromium') === null ? 'chromium not found' : null;
  if (mustSkip('chromium', missing, Boolean(process.env.CI))) return { look: async () => {} };
  mkdirSync(picturesFolder, { recursive: true });
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  const browser = await launchBrowser();
  const faults: string[] = [];
  const page = await openPage(browser, screens.tablet, { faults });
  onTestFinished(() => browser.close());

  return {
    /**
     * Opens a document, waits for its words, and takes a picture that must not be blank. A code on
     * it must lead to the batch that the document was asked for.
     *
     * @param name - also that of the picture
     * @param hash - what stands after `#/`
     * @param words - all of them must be on it
     */
    async look(name: PaperName, hash: string, words: readonly string[]): Promise<void> {
      await page.goto(`${address}/#/${hash}`);
      for (const text of words) await page.getByText(text).first().waitFor();
      await page.screenshot({ path: join(picturesFolder, `${name}.png`), fullPage: true });
      const sheet = await page.locator(sheets[name]).screenshot();
      expect(await inkShare(page, sheet), `${name} is blank`).toBeGreaterThan(leastInk);
      const code = page.locator('svg.qr');
      if ((await code.count()) > 0) {
        const batchId = /batchId=([^&]+)/.exec(hash)?.[1];
        expect(await decoded(page, code), name).toBe(`${address}/#/batch/${batchId}`);
      }
      // A page left open would ask anew at each of the thousand readings to come.
      await page.goto('about:blank');
      expect(faults, name).toEqual([]);
    },
  };
}

/** Half a per cent: a line of text on a page of its own has about that (assumption). */
const leastInk = 0.005;

/** The share of a picture that differs from its most frequent colour. */
async function inkShare(page: Page, picture: Buffer): Promise<number> {
  const counts = [...(await colourCounts(page, picture)).values()];
  return 1 - Math.max(...counts) / counts.reduce((sum, count) => sum + count, 0);
}
