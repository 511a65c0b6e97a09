import type { CDPSession, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { inventedWall } from './invented-wall.ts';
import { stubDaemon } from './stub-daemon.ts';

/** One overview every ten seconds. */
const UPDATES_PER_HOUR = 360;
const HOURS = 24;
/** So much of each hour passes second by second, with its turned pages. */
const TICKING_MS = 4 * 60_000;
const RACKS = 20;
/** Assumption: what a flat line may stray by, of a heap of a few MB and some thousand nodes. */
const MOST_GROWTH = 1.1;

interface Held {
  readonly JSHeapUsedSize: number;
  readonly Nodes: number;
  readonly JSEventListeners: number;
}

/** What a page holds on to once everything that can go has gone. */
async function heldBy(inspector: CDPSession): Promise<Held> {
  for (let i = 0; i < 3; i += 1) await inspector.send('HeapProfiler.collectGarbage');
  const { metrics } = await inspector.send('Performance.getMetrics');
  const of = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? Number.NaN;
  return {
    JSHeapUsedSize: of('JSHeapUsedSize'),
    Nodes: of('Nodes'),
    JSEventListeners: of('JSEventListeners'),
  };
}

/** By then every page was turned to and every path of the script was run and compiled. */
const WARM_HOURS = 4;

needs('chromium')('a wall that hangs for weeks', () => {
  it('holds no more after a day of updates and turned pages than after four hours', async () => {
    const browser = await launchBrowser();
    const start = Date.now();
    const stub = await stubDaemon(inventedWall(RACKS, start));
    const page = await openPage(browser, screens.tablet);
    await page.clock.install({ time: start });
    await page.goto(`${stub.page}/`);
    await page.locator('.wall-board').first().waitFor();
    const inspector = await page.context().newCDPSession(page);
    await inspector.send('Performance.enable');

    const hour = async (count: number): Promise<void> => {
      for (let i = 0; i < UPDATES_PER_HOUR; i += 1) {
        const now = start + (count * UPDATES_PER_HOUR + i) * 10_000;
        const wall = inventedWall(RACKS, now);
        const last = i === UPDATES_PER_HOUR - 1;
        stub.push({ ...wall, siteName: last ? `after hour ${count}` : wall.siteName });
      }
      await seen(page, `after hour ${count}`);
      await page.clock.runFor(TICKING_MS);
    };
    for (let count = 0; count < WARM_HOURS; count += 1) await hour(count);
    const whenWarm = await heldBy(inspector);
    for (let count = WARM_HOURS; count < HOURS; count += 1) await hour(count);
    const afterDay = await heldBy(inspector);
    await browser.close();
    await stub.close();

    for (const name of ['JSHeapUsedSize', 'Nodes', 'JSEventListeners'] as const) {
      expect(whenWarm[name], name).toBeGreaterThan(0);
      const grown = afterDay[name] / whenWarm[name];
      expect(grown, `${name}: ${whenWarm[name]}, then ${afterDay[name]}`).toBeLessThan(MOST_GROWTH);
    }
  });
});

/** Waits until the head of the page names the shed so. */
async function seen(page: Page, name: string): Promise<void> {
  await page.locator('.head-site', { hasText: new RegExp(`${name}$`) }).waitFor();
}
