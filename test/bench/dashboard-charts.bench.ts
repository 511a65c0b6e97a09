import { createServer, type Server } from 'node:http';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, bench, describe } from 'vitest';
import { launchBrowser } from '../browser/browser.ts';
import { figure, print } from './bench-print.ts';

const HERE = dirname(fileURLToPath(import.meta.url));
const POINTS = 1_000;
const SEASON_S = 183 * 86_400;
const to = Date.UTC(2026, 9, 1) / 1000;

/** What the daemon replies over a season: four quantities with their extremes, and a dew point. */
function season(): string {
  const stepS = Math.round(SEASON_S / POINTS);
  const at = Array.from({ length: POINTS }, (_, i) => to - SEASON_S + (i + 0.5) * stepS);
  const spread = (mean: number, by: number) => {
    const middle = at.map((moment) => mean + by * Math.sin(moment / 13_000));
    return {
      low: middle.map((value) => value - by / 3),
      mean: middle,
      high: middle.map((value) => value + by / 3),
    };
  };
  return JSON.stringify({
    ...{ from: new Date((to - SEASON_S) * 1000).toISOString(), stepS, byHour: true, at },
    to: new Date(to * 1000).toISOString(),
    tempC: spread(15, 6),
    rhPercent: spread(65, 20),
    dewPointC: spread(8, 3).mean,
    woodMoisturePercent: spread(15, 2),
    carbonDioxidePpm: spread(600, 200),
    marks: [],
  });
}

let browser: Browser;
let server: Server;
let page: Page;
let slow: Page;

/**
 * The drawing itself, as the pages build it, in a page of its own: from the text of a reply to the last
 * panel on its canvas.
 */
beforeAll(async () => {
  const bundle = await build({
    configFile: false,
    logLevel: 'silent',
    root: join(HERE, '../..'),
    build: {
      write: false,
      minify: true,
      target: 'es2018',
      lib: { entry: join(HERE, 'drawn-season.ts'), formats: ['iife'], name: 'season' },
    },
  });
  const outputs = (Array.isArray(bundle) ? bundle : [bundle]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  const script = outputs.find((one) => one.type === 'chunk');
  if (script?.type !== 'chunk') throw new Error('nothing was built');
  server = createServer((request, response) => {
    const isScript = request.url === '/season.js';
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(
      isScript
        ? script.code
        : '<!doctype html><div id="desk"></div><script src="/season.js"></script>',
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as { port: number };
  browser = await launchBrowser();
  const opened = async () => {
    const one = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await one.goto(`http://127.0.0.1:${port}/`);
    await one.evaluate((text) => {
      (window as unknown as { reply: string }).reply = text;
    }, season());
    return one;
  };
  page = await opened();
  slow = await opened();
  const cpu = await slow.context().newCDPSession(slow);
  await cpu.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  for (const [name, one] of [
    ['at full speed', page],
    ['six times slower', slow],
  ] as const) {
    const times = await drawnTimes(one, 15);
    const middle = times[Math.floor(times.length / 2)] ?? 0;
    print(
      `a season of ${POINTS} points, decoded and drawn on four panels, ${name}: ` +
        `best ${figure(times[0] ?? 0)} ms, median ${figure(middle)} ms, worst ${figure(times.at(-1) ?? 0)} ms`,
    );
  }
}, 120_000);

afterAll(async () => {
  await browser?.close();
  server?.close();
});

const drawnTimes = (one: Page, times: number): Promise<number[]> =>
  one.evaluate(async (count) => {
    const { season: drawn, reply } = window as unknown as {
      season: { draw: (text: string, desk: HTMLElement) => Promise<() => void> };
      reply: string;
    };
    const desk = document.querySelector<HTMLElement>('#desk');
    const took: number[] = [];
    for (let i = 0; i < count && desk; i++) {
      const start = performance.now();
      const close = await drawn.draw(reply, desk);
      took.push(performance.now() - start);
      close();
    }
    return took.sort((a, b) => a - b);
  }, times);

describe('a season of 1,000 points, decoded and drawn on four panels', () => {
  bench('at full speed', async () => void (await drawnTimes(page, 1)));
  bench('six times slower', async () => void (await drawnTimes(slow, 1)));
});
