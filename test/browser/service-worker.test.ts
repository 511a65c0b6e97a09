import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch } from '../../daemon/contract/batch.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

const BUILT = fileURLToPath(new URL('../../.build/dashboard', import.meta.url));

/** Until the worker of this page is in charge, with all files of its build. */
async function workerInCharge(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}

needs('chromium')('the app without a network', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batch: Batch;

  beforeAll(async () => {
    daemon = await runDaemon();
    ({ batch } = await rackWithCoat(daemon, 'North rack', 50));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('opens although the daemon is gone, shows what it last heard as old, and keeps what is entered', async () => {
    const faults: string[] = [];
    const page = await openPage(browser, screens.phone, { serviceWorkers: 'allow' });
    page.on('pageerror', (error) => faults.push(String(error)));
    await page.goto(`${daemon.page}/#/batch/${batch.id}`);
    await page.getByRole('region', { name: 'Verdict' }).waitFor();
    await workerInCharge(page);
    await daemon.kill();

    await page.close();
    const again = await page.context().newPage();
    await again.goto(`${daemon.page}/#/batch/${batch.id}`);
    await again.getByText(/^As of /).waitFor();
    expect(await again.locator('.plank-letters-hollow').count()).toBe(1);
    await again.getByRole('alert').getByText('No word from the shed').waitFor();
    const touch = again.getByRole('region', { name: 'May the next coat go on?' });
    await touch.getByRole('button', { name: 'It marks or colours' }).click();
    await touch.getByRole('button', { name: /^Record: / }).click();
    await again.locator('.unsent').getByText('Waits to be sent (1)').waitFor();
    // A page that was never opened before is there as well.
    await again.goto(`${daemon.page}/#/pot`);
    await again.getByRole('heading', { level: 1 }).waitFor();

    await daemon.restart();
    await again.locator('.unsent').waitFor({ state: 'detached', timeout: 60_000 });
    const { tests } = await daemon.call<Batch>('GET', `batches/${batch.id}`);
    expect(tests.map(({ passed }) => passed)).toEqual([false]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('can be put on a home screen: the manifest names icons of their true sizes', async () => {
    const manifest = (await (await fetch(`${daemon.page}/app.webmanifest`)).json()) as {
      icons: { src: string; sizes: string; type: string }[];
    };
    const drawn = manifest.icons.filter(({ type }) => type === 'image/png');
    expect(drawn).toHaveLength(2);
    for (const { src, sizes } of drawn) {
      const picture = Buffer.from(await (await fetch(new URL(src, daemon.page))).arrayBuffer());
      // PNG (ISO/IEC 15948:2004), 11.2.2: width and height stand in IHDR, at byte 16.
      expect(`${picture.readUInt32BE(16)}x${picture.readUInt32BE(20)}`).toBe(sizes);
    }
  });
});

needs('chromium')('a new build', () => {
  let server: Server;
  let browser: Browser;
  let folder: string;
  let page: string;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'boardcure-build-'));
    cpSync(BUILT, folder, { recursive: true });
    server = serve(folder);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    // In a folder of its own, as behind another server: all addresses are relative.
    page = `http://127.0.0.1:${(server.address() as AddressInfo).port}/shed/`;
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const build = (opened: Page) => opened.locator('meta[name="build"]').getAttribute('content');

  it('is shown at the next opening, and is then what is kept', async () => {
    const opened = await openPage(browser, screens.phone, { serviceWorkers: 'allow' });
    await opened.goto(page);
    await workerInCharge(opened);
    expect(await opened.locator('meta[name="build"]').count()).toBe(0);

    rewrite('index.html', (text) =>
      text.replace('<head>', '<head><meta name="build" content="2">'),
    );
    rewrite('sw.js', (text) => text.replace(/SHELL_VERSION="[^"]+"/, 'SHELL_VERSION="second"'));
    await opened.reload();
    expect(await build(opened)).toBe('2');

    await expect
      .poll(() => opened.evaluate(() => caches.has('boardcure-shell-second')), { timeout: 20_000 })
      .toBe(true);
    await opened.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const look = async () => {
            const { active, installing, waiting } = (await navigator.serviceWorker.ready) ?? {};
            if (active?.state === 'activated' && !installing && !waiting) resolve();
            else setTimeout(look, 50);
          };
          void look();
        }),
    );
    await new Promise((resolve) => server.close(resolve).closeAllConnections());
    await opened.goto('about:blank');
    await opened.goto(page);
    expect(await build(opened)).toBe('2');
    await opened.context().close();
  });

  function rewrite(file: string, change: (text: string) => string): void {
    const path = join(folder, file);
    const before = readFileSync(path, 'utf8');
    const after = change(before);
    expect(after).not.toBe(before);
    writeFileSync(path, after);
  }
});

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.png': 'image/png',
};

/** The pages alone, without a daemon. */
function serve(folder: string): Server {
  return createServer((request, response) => {
    const path = (request.url ?? '/').replace(/^\/shed\//, '/').split('?')[0] ?? '/';
    const file = path === '/' ? '/index.html' : path;
    try {
      const content = readFileSync(join(folder, file));
      response.writeHead(200, { 'content-type': kinds[extname(file)] ?? 'text/plain' });
      response.end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
}
