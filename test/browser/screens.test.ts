import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Language, languages } from '../../dashboard/words/language.ts';
import { needs } from '../house/needs.ts';
import { type AnyPage, allPages, furnish } from './all-pages.ts';
import { launchBrowser, openPage } from './browser.ts';
import { lostText } from './lost-text.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

/** Pictures of all pages, for whoever wants to look at them. */
const folder = fileURLToPath(new URL('../../.build/screens/', import.meta.url));

/** A phone, a small tablet, a tablet on the wall, a desk; each light in another language. */
const looks: readonly {
  width: number;
  height: number;
  light: 'day' | 'night';
  language: Language;
}[] = [
  { width: 390, height: 844, light: 'day', language: 'fi' },
  { width: 390, height: 844, light: 'night', language: 'de' },
  { width: 820, height: 1180, light: 'day', language: 'sv' },
  { width: 820, height: 1180, light: 'night', language: 'nb' },
  { width: 1280, height: 800, light: 'day', language: 'de' },
  { width: 1280, height: 800, light: 'night', language: 'fi' },
  { width: 1920, height: 1080, light: 'day', language: 'en' },
  { width: 1920, height: 1080, light: 'night', language: 'sv' },
];

needs('chromium')('every page, photographed', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batchId: string;

  beforeAll(async () => {
    mkdirSync(folder, { recursive: true });
    daemon = await runDaemon();
    ({ batchId } = await furnish(daemon));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  /** Waits for the page, whatever language it speaks: until nothing comes to it any more. */
  async function turnTo(page: Page, { path }: AnyPage): Promise<void> {
    await page.goto(`${daemon.page}/${path(batchId)}`);
    await page.waitForFunction(() => {
      const main = document.querySelector('main');
      const kept = window as unknown as { seen?: string; since?: number };
      const text = main?.textContent ?? '';
      if (text === '' || main?.getAttribute('aria-busy') === 'true' || text !== kept.seen) {
        kept.seen = text;
        kept.since = performance.now();
        return false;
      }
      return performance.now() - (kept.since ?? 0) > 100;
    });
  }

  it.each(looks)('$width px, $light, $language', async ({ width, height, light, language }) => {
    expect(languages).toContain(language);
    const page = await openPage(browser, { width, height });
    await page.addInitScript(
      (chosen) => {
        localStorage.setItem('boardcure.reader', JSON.stringify({ language: chosen.language }));
        localStorage.setItem('boardcure.screen', JSON.stringify({ light: chosen.light }));
      },
      { language, light },
    );
    const lost: Record<string, string[]> = {};
    for (const one of allPages) {
      await turnTo(page, one);
      expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe(light);
      expect(await page.evaluate(() => document.documentElement.lang)).toMatch(`${language}-`);
      const found = await lostText(page);
      if (found.length > 0) lost[one.name] = found;
      const name = `${one.name.replace(/\W+/g, '-')}-${width}-${light}-${language}.png`;
      await page.screenshot({ path: `${folder}${name}`, fullPage: true, animations: 'disabled' });
    }
    await page.context().close();
    expect(lost).toEqual({});
  });
});
