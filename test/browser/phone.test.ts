import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Photo } from '../../daemon/contract/photo.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');
const HOUR_MS = 3_600_000;
/** A thumb in a glove: the brief of this page, px. */
const LEAST_THUMB_PX = 56;
/** A red dot: a PNG of one pixel, made by hand. */
const PICTURE = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

needs('chromium')('a phone at the rack', () => {
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

  const now = () => daemon.call<Batch>('GET', `batches/${batch.id}`);

  async function atTheRack(id = batch.id, look = {}): Promise<Page> {
    const page = await openPage(browser, screens.phone, look);
    await page.goto(`${daemon.page}/#/batch/${id}`);
    await page.getByRole('region', { name: 'Verdict' }).waitFor();
    return page;
  }

  async function violations(page: Page): Promise<string[]> {
    await page.evaluate(axeSource);
    const { violations } = await page.evaluate(() =>
      (globalThis as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run(),
    );
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
  }

  const bar = (page: Page) => page.locator('.unsent');

  it('records a touch test with two taps on buttons for a gloved thumb, and takes a mis-tap back', async () => {
    const page = await atTheRack();
    const touch = page.getByRole('region', { name: 'May the next coat go on?' });
    const taps: string[] = [];
    const tap = async (name: string | RegExp) => {
      const button = touch.getByRole('button', { name });
      const box = await button.boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(LEAST_THUMB_PX);
      await button.click();
      taps.push(String(name));
    };
    await tap('It marks or colours');
    expect(await violations(page)).toEqual([]);
    await tap('Record: It marks or colours');
    await touch.getByText('Recorded').waitFor();
    expect(taps).toHaveLength(2);
    // A mis-tap: it was the other answer.
    await touch.getByRole('button', { name: 'Take it back' }).click();
    await touch.getByText('nothing was recorded').waitFor();
    await tap('No mark, no colour');
    await tap('Record: No mark, no colour');
    await touch.getByRole('listitem').first().waitFor();
    expect((await now()).tests.map(({ gate, passed }) => [gate, passed])).toEqual([
      ['recoat', true],
    ]);
    await page.context().close();
  });

  it('records a coat with three taps and not one key: now, the last tin, the plan’s faces', async () => {
    const tin = await daemon.call<{ id: string }>('POST', 'tins', {
      name: 'Ochre 5',
      kind: 'paint',
      colour: 'ochre',
    });
    const page = await atTheRack();
    const before = Date.now();
    await page.getByRole('button', { name: /^Record (a coat|the next coat)/ }).click();
    await page.getByLabel('Out of which tin').getByRole('option', { selected: true });
    await page.getByRole('button', { name: 'Record this coat' }).click();
    await page.getByRole('heading', { name: 'The rags, now' }).waitFor();
    const { coats, plan } = await now();
    const coat = coats.at(-1);
    expect(coat).toMatchObject({ coat: 1, tinId: tin.id, faces: plan.coats[1]?.faces });
    expect(Math.abs(Date.parse(coat?.finishedAt ?? '') - before)).toBeLessThan(60_000);
    await page.getByRole('button', { name: 'The rags are seen to' }).click();
    // Taken back, so that what follows finds the first coat.
    await daemon.call('DELETE', `batches/${batch.id}/coats/${coat?.id}`);
    await page.context().close();
  });

  it('keeps test, remark, coat and photo without a network, also over a reload, and sends each once', async () => {
    const scene = await rackWithCoat(daemon, 'Offline rack', 50);
    const { id } = scene.batch;
    const faults: string[] = [];
    const page = await atTheRack(id);
    page.on('pageerror', (error) => faults.push(String(error)));
    const actions = page.getByRole('region', { name: 'What to record' });
    const entered = Date.now();
    // The page can be loaded, the daemon's routes cannot be reached.
    await page.context().route('**/api/**', (route) => route.abort());
    const touch = page.getByRole('region', { name: 'May the next coat go on?' });
    await touch.getByRole('button', { name: 'No mark, no colour' }).click();
    await touch.getByRole('button', { name: /^Record: / }).click();
    await actions.getByRole('button', { name: 'Remark' }).click();
    await page.getByLabel('In your words').fill('a fly in the paint');
    await page.getByRole('button', { name: 'Record the remark' }).click();
    await actions.getByText('Kept on this device').waitFor();
    await actions.getByRole('button', { name: 'Photo' }).click();
    const photo = { name: 'dot.png', mimeType: 'image/png', buffer: PICTURE };
    await page.getByLabel('Photo', { exact: true }).setInputFiles(photo);
    await page.getByRole('button', { name: 'Keep the photo' }).click();
    await actions.getByText('Kept on this device').waitFor();
    await actions.getByRole('button', { name: /^Record (a coat|the next coat)/ }).click();
    await page.getByRole('button', { name: 'Record this coat' }).click();
    await page.getByRole('heading', { name: 'The rags, now' }).waitFor();
    await bar(page).getByText('Waits to be sent (4)').waitFor();

    await page.reload();
    await bar(page).getByText('Waits to be sent (4)').waitFor();
    // What was last heard is shown, and says that it is old.
    await page.getByText(/^As of /).waitFor();
    expect(await page.locator('.plank-letters-hollow').count()).toBe(1);
    await bar(page).getByRole('link').click();
    const names = page.getByRole('listitem').getByRole('heading');
    await page.getByRole('heading', { name: 'Waits to be sent', level: 1 }).waitFor();
    await expect
      .poll(() => names.allTextContents())
      .toEqual(['Touch test', 'Remark', 'Photo', 'Coat']);

    expect(await violations(page)).toEqual([]);

    await page.context().unroute('**/api/**');
    await page.getByRole('button', { name: 'Send now' }).click();
    await page.getByText('Nothing waits').waitFor();
    const read = await daemon.call<Batch>('GET', `batches/${id}`);
    expect(read.tests).toHaveLength(1);
    expect(read.remarks.map(({ text }) => text)).toEqual(['a fly in the paint']);
    expect(read.coats.map(({ coat }) => coat)).toEqual([0, 1]);
    const photos = await daemon.call<Photo[]>('GET', `batches/${id}/photos`);
    expect(photos).toHaveLength(1);
    for (const { at } of [...read.tests, ...read.remarks, ...photos]) {
      expect(Date.parse(at)).toBeGreaterThanOrEqual(entered - 1_000);
    }
    expect(read.tests[0]?.id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7/);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('sends by itself when the network returns, and once when only the reply was lost', async () => {
    const page = await atTheRack();
    const before = (await now()).remarks.length;
    const remark = async (text: string) => {
      await page
        .getByRole('region', { name: 'What to record' })
        .getByRole('button', { name: 'Remark' })
        .click();
      await page.getByLabel('In your words').fill(text);
      await page.getByRole('button', { name: 'Record the remark' }).click();
      await page.getByText('Kept on this device').waitFor();
    };
    // The daemon commits, and its answer never comes back.
    await page.context().route('**/remarks', async (route) => {
      await route.fetch();
      await route.abort();
    });
    await remark('reply lost');
    expect((await now()).remarks).toHaveLength(before + 1);
    await page.context().unroute('**/remarks');
    await page.context().setOffline(true);
    await remark('no network');
    await bar(page).getByText('Waits to be sent (2)').waitFor();
    await page.context().setOffline(false);
    await bar(page).waitFor({ state: 'detached' });
    const texts = (await now()).remarks.map(({ text }) => text);
    expect(texts.slice(before)).toEqual(['reply lost', 'no network']);
    await page.context().close();
  });

  it('keeps what the daemon refuses, and sends it corrected', async () => {
    const { batch: bare } = await rackWithCoat(daemon, 'Late rack', 20);
    const page = await atTheRack(bare.id);
    await page.context().setOffline(true);
    await page.getByRole('button', { name: 'Moved', exact: true }).click();
    await page.getByRole('radio', { name: 'At another time' }).check();
    const tomorrow = await page.evaluate((ms) => {
      const at = new Date(Date.now() + ms);
      at.setMinutes(at.getMinutes() - at.getTimezoneOffset());
      return at.toISOString().slice(0, 16);
    }, 24 * HOUR_MS);
    await page.getByLabel('Date and time').fill(tomorrow);
    await page.getByRole('button', { name: 'Record the move' }).click();
    await bar(page).getByText('Waits to be sent (1)').waitFor();
    // Until then a refusal would go to the form, which still waits for an answer.
    await page.getByText('Kept on this device').waitFor();
    await page.context().setOffline(false);
    await bar(page).getByText('1 entry was not taken').waitFor();
    await bar(page).getByRole('link').click();
    // The list of the batch has such an entry too; the checks below are of the page of what waits.
    await page.getByRole('heading', { name: 'Waits to be sent', level: 1 }).waitFor();
    const entry = page.getByRole('listitem').filter({ hasText: 'Move' });
    await entry.getByText('not taken').waitFor();
    expect(await violations(page)).toEqual([]);
    const field = entry.getByLabel('When');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    const yesterday = await page.evaluate((ms) => {
      const at = new Date(Date.now() - ms);
      at.setMinutes(at.getMinutes() - at.getTimezoneOffset());
      return at.toISOString().slice(0, 16);
    }, HOUR_MS);
    await field.fill(yesterday);
    await entry.getByRole('button', { name: 'Send it again' }).click();
    await page.getByText('Nothing waits').waitFor();
    const { moves } = await daemon.call<Batch>('GET', `batches/${bare.id}`);
    expect(moves.filter(({ at }) => at !== null)).toHaveLength(1);
    await page.context().close();
  });

  it('lets two phones work on one batch at once', async () => {
    const before = (await now()).remarks.length;
    const phones = await Promise.all([atTheRack(), atTheRack()]);
    await Promise.all(
      phones.map(async (page, at) => {
        await page.context().setOffline(true);
        await page.getByRole('button', { name: 'Remark' }).click();
        await page.getByLabel('In your words').fill(`phone ${at}`);
        await page.getByRole('button', { name: 'Record the remark' }).click();
        await bar(page).getByText('Waits to be sent (1)').waitFor();
        await page.context().setOffline(false);
        await bar(page).waitFor({ state: 'detached' });
      }),
    );
    const texts = (await now()).remarks.slice(before).map(({ text }) => text);
    expect(texts.sort()).toEqual(['phone 0', 'phone 1']);
    await Promise.all(phones.map((page) => page.context().close()));
  });

  it('writes the shed’s time when the phone’s clock is five hours wrong', async () => {
    const before = (await now()).remarks.length;
    const page = await openPage(browser, screens.phone);
    await page.addInitScript((ms) => {
      const RealDate = Date;
      const ahead = () => RealDate.now() + ms;
      globalThis.Date = class extends RealDate {
        constructor(...given: [] | [number]) {
          super(...((given.length === 0 ? [ahead()] : given) as [number]));
        }
        static override now = ahead;
      } as DateConstructor;
    }, 5 * HOUR_MS);
    await page.goto(`${daemon.page}/#/batch/${batch.id}`);
    await page.getByRole('region', { name: 'Verdict' }).waitFor();
    await page.context().route('**/api/**', (route) => route.abort());
    // Also after a reload without the daemon: what it last said of the time is kept.
    await page.reload();
    await page.getByRole('button', { name: 'Remark' }).click();
    const entered = Date.now();
    await page.getByRole('button', { name: 'Record the remark' }).click();
    await bar(page).getByText('Waits to be sent (1)').waitFor();
    await page.context().unroute('**/api/**');
    await page.reload();
    await expect
      .poll(async () => (await now()).remarks.length, { timeout: 20_000 })
      .toBe(before + 1);
    const { remarks } = await now();
    const off = Date.parse(remarks.at(-1)?.at ?? '') - entered;
    expect(Math.abs(off)).toBeLessThan(60_000);
    await page.context().close();
  });

  it('is gone through with the keys alone: answer, record, take back, in this order', async () => {
    const page = await atTheRack();
    const touch = page.getByRole('region', { name: 'May the next coat go on?' });
    await touch.getByRole('button', { name: 'It marks or colours' }).focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    expect(await focused()).toBe('Record: No mark, no colour');
    await page.keyboard.press('Enter');
    await touch.getByRole('button', { name: 'Take it back' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('Take it back');
    await page.keyboard.press('Enter');
    await touch.getByText('nothing was recorded').waitFor();
    await page.context().close();
  });

  it('tells a moment in a painter’s words, and its exact hour at a tap', async () => {
    const page = await atTheRack();
    const moment = page.locator('.coat-facts .moment');
    const words = await moment.textContent();
    expect(words).toMatch(/day|yesterday|last night/);
    await moment.focus();
    await page.keyboard.press('Enter');
    expect(await moment.textContent()).toMatch(/\d{1,2}:\d{2}/);
    expect(await moment.getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.press('Enter');
    expect(await moment.textContent()).toBe(words);
    await page.context().close();
  });

  it('goes round rack by rack, with what is wrong and the week', async () => {
    const page = await openPage(browser, screens.phone);
    await page.goto(`${daemon.page}/#/round`);
    const rack = page.getByRole('region', { name: 'North rack', exact: true });
    await rack
      .getByText(/^(Leave it|Feel it|Go on|Held)/)
      .first()
      .waitFor();
    await rack.getByText('Nothing wrong with the air.').waitFor();
    const batches = rack.getByRole('listitem').filter({ has: page.getByRole('link') });
    expect(await rack.locator('.week-half').count()).toBe(14 * (await batches.count()));
    await page.context().close();
  });
});
