import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

/** Script, style and words that the wall fetches, gzipped. */
const WALL_BYTES = 90_000;
/** The same with the charts of a batch. */
const WITH_CHART_BYTES = 90_000;
/** Where the built files lie. */
const ASSETS = fileURLToPath(new URL('../../.build/dashboard/assets/', import.meta.url));

/** A built script and all that comes along with it at once. */
function withImports(name: string, found = new Set<string>()): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  const script = readFileSync(`${ASSETS}${name}`, 'utf8');
  for (const [, next = ''] of script.matchAll(/(?:from|import)"\.\/([^"]+\.js)"/g)) {
    withImports(next, found);
  }
  return found;
}

needs('chromium')('what is sent to a browser', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page = '';
  const files = new Map<string, string>();

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    page = await (await fetch(`${daemon.page}/`)).text();
    for (const [, path = ''] of page.matchAll(/(?:src|href)="\.?\/?([^"]+\.(?:js|css))"/g)) {
      files.set(path, await (await fetch(`${daemon.page}/${path}`)).text());
    }
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('is small enough for a slow tablet: the wall in one language, and with it a chart', async () => {
    const opened = await openPage(browser, screens.tablet);
    const fetched = new Map<string, number>();
    opened.on('response', async (response) => {
      if (!/\/assets\/.*\.(js|css)$/.test(response.url())) return;
      fetched.set(response.url(), 0);
      fetched.set(response.url(), gzipSync(await response.body()).length);
    });
    const bytes = () => [...fetched.values()].reduce((sum, size) => sum + size, 0);
    await opened.goto(`${daemon.page}/`);
    await opened.getByRole('navigation', { name: 'Pages' }).waitFor();
    expect(fetched.size).toBeGreaterThanOrEqual(4);
    expect(bytes()).toBeLessThanOrEqual(WALL_BYTES);
    const chart = readdirSync(ASSETS).filter((name) => /^chart-.*\.(js|css)$/.test(name));
    expect(chart.length).toBe(2);
    const drawn = new Set(
      chart.flatMap((name) => (name.endsWith('.js') ? [...withImports(name)] : [name])),
    );
    for (const address of fetched.keys()) drawn.delete(address.slice(address.lastIndexOf('/') + 1));
    const chartBytes = [...drawn].map((name) => gzipSync(readFileSync(`${ASSETS}${name}`)).length);
    expect(chartBytes.reduce((sum, size) => sum + size, bytes())).toBeLessThanOrEqual(
      WITH_CHART_BYTES,
    );
    await opened.context().close();
  });

  it('holds types of the contract only, none of its code', () => {
    const script = [...files].filter(([path]) => path.endsWith('.js')).map(([, text]) => text);
    expect(script.join('')).not.toContain('BC_REQUEST_INVALID');
    expect(script.join('')).not.toMatch(/ZodObject|strictObject/);
  });

  it('has no script and no style in the page itself', () => {
    expect(page).not.toMatch(/<script(?![^>]*\ssrc=)[^>]*>/);
    expect(page).not.toMatch(/<style|\sstyle=|\son\w+=/);
  });

  it('asks nothing of any other machine, and breaks no rule of its own policy', async () => {
    const faults: string[] = [];
    const opened = await openPage(browser, screens.desk, { faults });
    const elsewhere: string[] = [];
    opened.on('request', (request) => {
      if (!request.url().startsWith(daemon.page)) elsewhere.push(request.url());
    });
    for (const path of ['#/', '#/setup', '#/access', '#/api', '#/cautions']) {
      await opened.goto(`${daemon.page}/${path}`);
      await opened.getByRole('navigation', { name: 'Pages' }).waitFor();
    }
    expect(elsewhere).toEqual([]);
    expect(faults).toEqual([]);
  });
});
