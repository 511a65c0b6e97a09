import type { Browser, Page } from 'playwright-core';
import { bench, describe } from 'vitest';
import { wallLayout } from '../../dashboard/wall/wall-layout.ts';
import { launchBrowser, openPage, screens } from '../browser/browser.ts';
import { inventedWall } from '../browser/invented-wall.ts';
import { type StubDaemon, stubDaemon } from '../browser/stub-daemon.ts';
import { figure, print } from './bench-print.ts';
import { plainTable } from './plain-table.ts';

/** Four boards on a tablet, as in a small shed, and twenty on five pages. */
const RACKS = [4, 20] as const;
/** 1 is this machine; 6 is about a slow tablet (assumption). */
const SLOWER = [1, 6] as const;
const ROUNDS = 7;
const EVENTS = 15;

const browser = await launchBrowser();
const lines: string[][] = [];
for (const racks of RACKS) {
  const stub = await stubDaemon(inventedWall(racks, Date.now()));
  for (const slower of SLOWER) {
    const first: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      first.push(await firstVerdictMs(browser, stub, slower));
    }
    const events = await eventMs(browser, stub, slower, racks);
    const spans = [median(first), Math.max(...first), median(events), Math.max(...events)];
    lines.push([String(racks), `${slower} ×`, ...spans.map((ms) => `${figure(ms, 0)} ms`)]);
  }
  await stub.close();
}
await browser.close();
print(
  plainTable(['racks', 'slower', 'first verdict', 'longest', 'event to pixels', 'longest'], lines),
);

describe('the boards of twenty racks', () => {
  bench('laid on a tablet', () => {
    wallLayout(
      {
        widthPx: 1280,
        heightPx: 690,
        textPx: 16,
        longestWord: 5.3,
        rise: 0,
        leastLetterPx: 104,
        extraLines: 0,
      },
      20,
    );
  });
});

/** From the start of the navigation to the frame that holds a laid word, with nothing cached, ms. */
async function firstVerdictMs(browser: Browser, stub: StubDaemon, slower: number): Promise<number> {
  const page = await slowPage(browser, slower);
  await page.addInitScript(() => {
    const look = () => {
      if (document.querySelector('.plank-letters path') === null) requestAnimationFrame(look);
      // The frame after the one in which it was found has been painted.
      // biome-ignore lint/suspicious/noConsole: the way of this page to tell the bench.
      else requestAnimationFrame(() => console.info(performance.now()));
    };
    requestAnimationFrame(look);
  });
  // Told by the page itself: whoever asks it puts a script of 330 kB into it first, at its own speed.
  const told = page.waitForEvent('console', (message) => message.type() === 'info');
  await page.goto(`${stub.page}/`);
  const ms = Number((await told).text());
  await page.context().close();
  return ms;
}

/** From the arrival of an overview in the page to the next painted frame with its words, ms. */
async function eventMs(
  browser: Browser,
  stub: StubDaemon,
  slower: number,
  racks: number,
): Promise<number[]> {
  const page = await slowPage(browser, slower);
  await page.addInitScript(() => {
    const taken: number[] = [];
    Object.assign(window, { eventMs: taken });
    const Plain = window.EventSource;
    window.EventSource = class extends Plain {
      constructor(address: string | URL) {
        super(address);
        // Before the page’s own handler: what it does counts.
        this.addEventListener('message', () => {
          const at = performance.now();
          const name = document.querySelector('.wall-batch')?.textContent;
          const look = () => {
            if (document.querySelector('.wall-batch')?.textContent === name) {
              requestAnimationFrame(look);
            } else requestAnimationFrame(() => taken.push(performance.now() - at));
          };
          if (name !== undefined) requestAnimationFrame(look);
        });
      }
    };
  });
  await page.goto(`${stub.page}/`);
  await page.locator('.wall-board').first().waitFor();
  for (let i = 0; i < EVENTS; i += 1) {
    const wall = inventedWall(racks, Date.now());
    stub.push({
      ...wall,
      places: wall.places.map((place) => ({
        ...place,
        batches: place.batches.map((batch) => ({ ...batch, name: `Boards ${i}` })),
      })),
    });
    await page.waitForFunction(
      (count) => (window as unknown as { eventMs: number[] }).eventMs.length >= count,
      i + 1,
    );
  }
  const taken = await page.evaluate(() => (window as unknown as { eventMs: number[] }).eventMs);
  await page.context().close();
  return taken;
}

async function slowPage(browser: Browser, slower: number): Promise<Page> {
  const page = await openPage(browser, screens.tablet);
  const inspector = await page.context().newCDPSession(page);
  await inspector.send('Emulation.setCPUThrottlingRate', { rate: slower });
  return page;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
