import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

/** Script and style of the wall page with its charts, gzipped. */
const BUDGET_BYTES = 90_000;

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

  it('is small enough for a slow tablet', () => {
    const sizes = [...files.values()].map((text) => gzipSync(text).length);
    expect(sizes.length).toBeGreaterThanOrEqual(2);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(BUDGET_BYTES);
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
