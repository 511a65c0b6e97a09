import { connectAsync } from 'mqtt';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

/** Does its harm wherever it is not shown as the text that it is. */
const script = '<img src=x onerror="window.harmed=1"><script>window.harmed=1</script>';

needs('chromium')('a script in a name (XSS)', () => {
  let daemon: RunningDaemon;
  let browser: Browser;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('of a place, a batch, a sensor, a remark, a message or a client is a text', async () => {
    const { batch } = await rackWithCoat(daemon, 'North rack', 60);
    const name = script.slice(0, 80);
    await daemon.call('PATCH', `batches/${batch.id}`, { name });
    await daemon.call('POST', 'places', { name, kind: 'room' });
    await daemon.publish('probe-7', 'air-temperature', [{ value: 18.2, at: Date.now() }]);
    await daemon.call('PATCH', 'sensors/probe-7', { name });
    const at = new Date().toISOString();
    await daemon.call('POST', `batches/${batch.id}/remarks`, { at, kind: 'runs', text: script });
    const health = await fetch(`${daemon.page}/healthz`);
    expect(health.status).toBe(200);
    const client = await connectAsync(`mqtt://127.0.0.1:${daemon.mqttPort}`, { clientId: script });
    await client.subscribeAsync('boardcure/shed/#');
    await client.publishAsync(`boardcure/shed/sensor/probe-7/${script}`, script, { qos: 1 });
    await client.endAsync();

    const page = await openPage(browser, screens.desk);
    for (const [address, shown] of [
      ['#/', name],
      [`#/batch/${batch.id}`, script],
      ['#/setup', name],
      ['#/access', 'Access'],
    ] as const) {
      await page.goto(`${daemon.page}/${address}`);
      await page.getByText(shown).first().waitFor({ state: 'attached' });
      for (const fold of await page.locator('details').all()) {
        await fold.evaluate((one) => one.setAttribute('open', ''));
      }
      expect(await page.evaluate(() => 'harmed' in globalThis), address).toBe(false);
      expect(await page.locator('img[src="x"]').count(), address).toBe(0);
    }
    await page.context().close();
  });

  it('that got into the page all the same is not run: the policy forbids it', async () => {
    const page = await openPage(browser, screens.desk);
    await page.goto(`${daemon.page}/#/`);
    await page.evaluate((html) => document.body.insertAdjacentHTML('beforeend', html), script);
    await page.locator('img[src="x"]').waitFor({ state: 'attached' });
    // Settles once the picture has failed, and whatever hangs on that was run.
    await page
      .locator('img[src="x"]')
      .evaluate((one: HTMLImageElement) => one.decode().catch(() => {}));
    expect(await page.evaluate(() => 'harmed' in globalThis)).toBe(false);
    await page.context().close();
  });
});
