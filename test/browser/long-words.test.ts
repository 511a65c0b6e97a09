import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { type AnyPage, allPages, furnish } from './all-pages.ts';
import { launchBrowser, openPage, type Screen, screens } from './browser.ts';
import { lostText } from './lost-text.ts';
import { longer, speakLonger } from './pseudo-words.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

interface Reading {
  readonly screen: Screen;
  /** Words half as long again. */
  readonly isLonger: boolean;
  /** Of the text, as a reader sets it. */
  readonly zoomPercent: number;
}

/**
 * The ways in which people read who need more room.
 *
 * **Source:** WCAG 2.2, success criteria 1.4.4 (text at 200 %) and 1.4.10 (reflow at 320 CSS px); that
 * other languages take half as much room again is common practice, no source.
 */
const readings: Readonly<Record<string, Reading>> = {
  'longer words on a phone': {
    screen: { width: 390, height: 844 },
    isLonger: true,
    zoomPercent: 100,
  },
  'longer words on a tablet': {
    screen: { width: 1280, height: 800 },
    isLonger: true,
    zoomPercent: 100,
  },
  'text twice as large': {
    screen: { width: 1280, height: 800 },
    isLonger: false,
    zoomPercent: 200,
  },
  'a window of 320 px': {
    screen: { width: 320, height: 640 },
    isLonger: false,
    zoomPercent: 100,
  },
};

needs('chromium')('text that needs more room is never lost', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batchId: string;

  beforeAll(async () => {
    daemon = await runDaemon();
    ({ batchId } = await furnish(daemon));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  async function turnTo(page: Page, { path, ready }: AnyPage): Promise<void> {
    await page.goto(`${daemon.page}/${path(batchId)}`);
    // Data of the shed stay as they are, words of the catalogue do not.
    await page
      .getByText(ready)
      .or(page.getByText(String(longer(ready))))
      .first()
      .waitFor();
    await page.evaluate(async () => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    });
  }

  it.each(Object.entries(readings))('%s', async (_, { screen, isLonger, zoomPercent }) => {
    const page = await openPage(browser, screen);
    if (isLonger) await speakLonger(page);
    await page.goto(`${daemon.page}/#/cautions`);
    await page.evaluate((percent) => {
      document.documentElement.style.fontSize = `${percent}%`;
    }, zoomPercent);
    const lost: Record<string, string[]> = {};
    for (const one of allPages) {
      await turnTo(page, one);
      const found = await lostText(page);
      if (found.length > 0) lost[one.name] = found;
    }
    await page.context().close();
    expect(lost).toEqual({});
  });

  it('would be found out by text that is cut off, off the page, or under other text', async () => {
    const page = await openPage(browser, screens.phone);
    await page.goto(`${daemon.page}/#/cautions`);
    const title = page.getByRole('heading', { level: 1 });
    await title.waitFor();
    expect(await lostText(page)).toEqual([]);
    const found: string[] = [];
    for (const [property, value] of [
      ['width', '2rem'],
      ['marginLeft', '20rem'],
      ['marginBottom', '-3rem'],
    ] as const) {
      await title.evaluate(
        (heading, [name, size]) => {
          heading.style.overflow = name === 'width' ? 'hidden' : 'visible';
          heading.style.overflowWrap = 'normal';
          heading.style[name] = size;
        },
        [property, value] as const,
      );
      found.push(...(await lostText(page)));
      await title.evaluate((heading) => heading.removeAttribute('style'));
    }
    expect(found).toEqual([
      expect.stringMatching(/^cut off: “Cautions”/),
      expect.stringMatching(/^sticks out: “Cautions”/),
      expect.stringMatching(/^off the page: “Cautions”/),
      expect.stringMatching(/^the page is .* wider/),
      expect.stringMatching(/^under other text: /),
    ]);
    await page.context().close();
  });
});
