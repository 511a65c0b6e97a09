import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { parse } from 'csv-parse/sync';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Series } from '../../daemon/contract/series.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { colourCounts } from './colour-counts.ts';
import { curvingShed, HOUR_MS } from './curve-scene.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

interface Asked {
  readonly path: string;
  readonly from: number | null;
  readonly to: number | null;
}

needs('chromium')('the curves', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let scene: Awaited<ReturnType<typeof curvingShed>>;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    scene = await curvingShed(daemon, 12);
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  /** A page with its curves drawn, and what it asks for curves of from now on. */
  async function open(
    address: string,
    look: Parameters<typeof openPage>[2] & { screen?: keyof typeof screens } = {},
  ): Promise<{ page: Page; asked: Asked[]; faults: string[] }> {
    const faults: string[] = [];
    const { screen = 'tablet', ...given } = look;
    const page = await openPage(browser, screens[screen], { faults, ...given });
    const asked: Asked[] = [];
    page.on('request', (request) => {
      const url = new URL(request.url());
      if (!url.pathname.endsWith('/curves')) return;
      const at = (name: string) => {
        const moment = url.searchParams.get(name);
        return moment === null ? null : Date.parse(moment);
      };
      asked.push({ path: url.pathname, from: at('from'), to: at('to') });
    });
    await page.goto(`${daemon.page}/${address}`);
    await page.locator('.chart canvas').first().waitFor();
    return { page, asked, faults };
  }

  /** The next time that curves are asked for over less than so long, h. */
  const askedCloser = (page: Page, belowHours: number) =>
    page.waitForRequest((request) => {
      const { pathname, searchParams } = new URL(request.url());
      const [from, to] = [searchParams.get('from'), searchParams.get('to')];
      if (!pathname.endsWith('/curves') || from === null || to === null) return false;
      return Date.parse(to) - Date.parse(from) < belowHours * HOUR_MS;
    });

  const drawing = (page: Page) =>
    page
      .locator('.chart canvas')
      .first()
      .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());

  const airOf = () => `#/air/${scene.room.id}?span=week`;

  it('are drawn for a place and its room’s quantities, and the light of the page is theirs', async () => {
    const { page, faults } = await open(airOf());
    const panels = await page.locator('.panel-name').allTextContents();
    expect(panels.map((text) => text.replace(/\s\S+$/, ''))).toEqual(
      expect.arrayContaining(['Temperature', 'Relative humidity', 'Carbon dioxide']),
    );
    const before = await drawing(page);
    await page.evaluate(() => {
      document.documentElement.dataset.light = 'night';
    });
    await expect.poll(() => drawing(page)).not.toBe(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are drawn as by day for paper, and as by night again after it', async () => {
    const { page, faults } = await open(airOf(), { colorScheme: 'dark' });
    const light = () => page.evaluate(() => document.documentElement.dataset.light);
    const tell = (print: string) => page.evaluate((type) => dispatchEvent(new Event(type)), print);
    expect(await light()).toBe('night');
    const byNight = await drawing(page);
    await tell('beforeprint');
    expect(await light()).toBe('day');
    await expect.poll(() => drawing(page)).not.toBe(byNight);
    const onPaper = await drawing(page);
    await tell('afterprint');
    await expect.poll(() => drawing(page)).toBe(byNight);
    await page.emulateMedia({ colorScheme: 'light' });
    await expect.poll(() => drawing(page)).toBe(onPaper);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are asked for closer by keys, by wheel, and come back whole', async () => {
    const { page, faults } = await open(airOf());
    const stack = page.locator('.chart-stack');
    await stack.focus();
    const byKey = askedCloser(page, 7 * 24);
    await page.keyboard.press('+');
    await byKey;
    const byWheel = askedCloser(page, 3 * 24);
    await page.locator('.u-over').first().hover();
    await page.mouse.wheel(0, -700);
    await byWheel;
    const span = page.locator('.chart-span');
    const closer = await span.textContent();
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => span.textContent()).not.toBe(closer);
    await page.getByRole('button', { name: 'All of it' }).click();
    await page.getByRole('button', { name: 'All of it', disabled: true }).waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('have a cursor that the keys lead along all panels at once, and say what it shows', async () => {
    const { page, faults } = await open(`#/batch/${scene.batch.id}`);
    await page.locator('.chart-stack').focus();
    const line = page.locator('.chart-cursor');
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => line.textContent()).toMatch(/Air: \d+\.\d\s°C.*Moisture: \d+\.\d\s%/);
    expect(await line.getAttribute('aria-live')).toBe('polite');
    const lines = () =>
      page.locator('.u-cursor-x').evaluateAll((all) => all.map((one) => one.style.transform));
    const before = await lines();
    expect(new Set(before).size).toBe(1);
    await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(lines).not.toEqual(before);
    expect(new Set(await lines()).size).toBe(1);
    // Up to the three boards that were measured.
    await page.keyboard.press('Shift+Home');
    for (let step = 0; step < 50; step++) {
      if (/South gable, .*: board 1/.test((await line.textContent()) ?? '')) break;
      await page.keyboard.press('Shift+ArrowRight');
      await page.waitForFunction(() => true);
    }
    expect(await line.textContent()).toMatch(
      /board 1 14\.2\s%, board 2 13\.1\s%, board 3 15\.4\s%/,
    );
    const key = page.locator('.panel-moisture .panel-key');
    expect(await key.textContent()).toMatch(/board 2 13\.1\s%/);
    await page.keyboard.press('Escape');
    await expect.poll(() => line.textContent()).toBe('');
    expect(await key.textContent()).toContain('By hand');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are asked for closer by two fingers, and moved by one', async () => {
    const { page } = await open(airOf(), { screen: 'phone', hasTouch: true });
    await page.locator('.u-over').first().scrollIntoViewIfNeeded();
    const box = await page.locator('.u-over').first().boundingBox();
    if (!box) throw new Error('nothing is drawn');
    const touch = await page.context().newCDPSession(page);
    const at = (shares: readonly number[]) =>
      shares.map((share, id) => ({
        ...{ id, x: box.x + share * box.width, y: box.y + box.height / 2 },
      }));
    const dispatch = (type: 'touchStart' | 'touchMove' | 'touchEnd', shares: readonly number[]) =>
      touch.send('Input.dispatchTouchEvent', { type, touchPoints: at(shares) });
    const closer = askedCloser(page, 4.5 * 24);
    await dispatch('touchStart', [0.4, 0.6]);
    for (const apart of [0.15, 0.2, 0.25, 0.3])
      await dispatch('touchMove', [0.5 - apart, 0.5 + apart]);
    await dispatch('touchEnd', []);
    await closer;
    const span = page.locator('.chart-span');
    const before = await span.textContent();
    await dispatch('touchStart', [0.7]);
    for (const share of [0.6, 0.5, 0.4]) await dispatch('touchMove', [share]);
    await dispatch('touchEnd', []);
    await expect.poll(() => span.textContent()).not.toBe(before);
    await page.context().close();
  });

  it('extend with a new reading without a jump of what is looked at', async () => {
    const { page, asked } = await open(airOf());
    await page.locator('.chart-stack').focus();
    await page.keyboard.press('+');
    const span = page.locator('.chart-span');
    const looked = await span.textContent();
    const before = asked.length;
    await daemon.publish('shed-1', 'air-temperature', [{ value: 31.5, at: Date.now() }]);
    await expect.poll(() => asked.length, { timeout: 20_000 }).toBeGreaterThan(before);
    expect(await span.textContent()).toBe(looked);
    await page.getByRole('button', { name: 'All of it' }).click();
    const temperature = page.getByRole('img', { name: /^Temperature/ });
    await expect
      .poll(() => temperature.getAttribute('aria-label'), { timeout: 20_000 })
      .toContain('31.5');
    await page.context().close();
  });

  it('stand beside as a table that has the very extremes of the readings', async () => {
    const to = new Date(scene.now - 24 * HOUR_MS);
    const from = new Date(to.getTime() - 24 * HOUR_MS);
    const time = `from=${from.toISOString()}&to=${to.toISOString()}`;
    const { page } = await open(`#/air/${scene.room.id}?sensor=yard-1&${time}`);
    await page.getByText('The same as a table').click();
    await page.locator('.chart-table table').first().waitFor();
    const rows = await page.locator('.chart-table tbody tr').evaluateAll((all) =>
      all.map((row) => ({
        at: row.querySelector('time')?.dateTime ?? '',
        figures: row.querySelector('td')?.textContent ?? '',
      })),
    );
    const series = await daemon.call<Series>(
      'GET',
      `series?sensor=yard-1&quantity=air-temperature&${time}`,
    );
    expect(rows.length).toBeGreaterThan(20);
    let checked = 0;
    for (const [i, row] of rows.entries()) {
      const start = Date.parse(row.at) / 1000;
      const end = Date.parse(rows[i + 1]?.at ?? '') / 1000;
      // The first and the last row reach over the edges of the time.
      if (!(end > start) || start * 1000 < from.getTime()) continue;
      const within = series.value.filter((_, j) => {
        const at = series.at[j] ?? 0;
        return at >= start && at < end;
      }) as number[];
      const [low, mean, high] = row.figures.split(' / ').map(Number);
      const average = within.reduce((sum, value) => sum + value, 0) / within.length;
      // Written to a tenth.
      expect(Math.abs((low ?? 0) - Math.min(...within))).toBeLessThanOrEqual(0.051);
      expect(Math.abs((high ?? low ?? 0) - Math.max(...within))).toBeLessThanOrEqual(0.051);
      expect(Math.abs((mean ?? low ?? 0) - average)).toBeLessThanOrEqual(0.051);
      checked++;
    }
    expect(checked).toBeGreaterThan(20);
    await page.context().close();
  });

  it('are kept as a file with the same figures, metric also for a reader of °F', async () => {
    const to = new Date(scene.now - 24 * HOUR_MS);
    const from = new Date(to.getTime() - 12 * HOUR_MS);
    const time = `from=${from.toISOString()}&to=${to.toISOString()}`;
    const { page, faults } = await open(`#/air/${scene.room.id}?sensor=yard-1&${time}`, {
      locale: 'en-US',
    });
    await page.getByText('°F').first().waitFor();
    const begun = page.waitForEvent('download');
    await page.getByRole('button', { name: 'As a table (CSV)' }).click();
    const download = await begun;
    expect(download.suggestedFilename()).toMatch(/^yard-1 \d{4}-\d\d-\d\d .*\.csv$/);
    const text = readFileSync(await download.path(), 'utf8');
    const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    const series = await daemon.call<Series>(
      'GET',
      `series?sensor=yard-1&quantity=air-temperature&${time}`,
    );
    // A stretch is shorter than the time between two readings: each has one of its own, or none.
    for (const head of ['lowest', 'mean', 'highest']) {
      const read = rows.filter((row) => row['air temperature, lowest (°C)'] !== '');
      const kept = read.map((row) => Number(row[`air temperature, ${head} (°C)`]));
      expect(kept).toEqual(series.value);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are kept as a picture at twice the measure, which is not blank', async () => {
    const { page, faults } = await open(`#/batch/${scene.batch.id}`);
    const begun = page.waitForEvent('download');
    await page.getByRole('button', { name: 'As a picture (PNG)' }).click();
    const png = readFileSync(await (await begun).path());
    // PNG (ISO/IEC 15948): eight bytes of signature, then IHDR with width and height.
    expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect(png.readUInt32BE(16)).toBe(2 * (1_120 + 2 * 28));
    const by = await colourCounts(page, png);
    // Linen, and on it ink and the red of the temperature: the pigments of paint.css by day.
    expect(by.get(0xefe8da) ?? 0).toBeGreaterThan(100_000);
    expect(by.get(0x7d2c20) ?? 0).toBeGreaterThan(500);
    expect(by.get(0x271e17) ?? 0).toBeGreaterThan(500);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('of a coat tell its jobs, what is to come and what was done', async () => {
    const { page } = await open(`#/batch/${scene.batch.id}`);
    await page.getByRole('img', { name: /^Degree-hours/ }).waitFor();
    await page.getByText('The same as a table').click();
    const byHand = page.getByRole('table', { name: 'Wood moisture measured by hand' });
    expect(await byHand.textContent()).toMatch(
      /board 1 14\.2\s%, board 2 13\.1\s%, board 3 15\.4\s%/,
    );
    const marks = await page.locator('.chart-table table').last().textContent();
    expect(marks).toContain('South gable: felt not yet ready to turn');
    expect(marks).toContain('South gable: felt ready to turn');
    expect(marks).toContain('Runs: =1+1 on two');
    await page.context().close();
  });

  it.each(['phone', 'tablet', 'desk'] as const)(
    'break no rule of access and never scroll sideways on a %s',
    async (screen) => {
      for (const address of [airOf(), `#/batch/${scene.batch.id}`]) {
        const { page } = await open(address, { screen });
        await page.getByText('The same as a table').click();
        await page.locator('.chart-table table').first().waitFor();
        await page.evaluate(axe.source);
        const violations = await page.evaluate(async () => {
          const found = await (window as unknown as { axe: typeof axe }).axe.run(document, {
            resultTypes: ['violations'],
          });
          return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
        });
        expect(violations).toEqual([]);
        const across = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(across).toBeLessThanOrEqual(0);
        await page.context().close();
      }
    },
  );

  it('of a season are drawn from the extremes of hours', async () => {
    const { page } = await open(airOf());
    const replied = page.waitForResponse((response) => {
      const url = new URL(response.url());
      return url.pathname.endsWith('/curves') && response.request().method() === 'GET';
    });
    await page.getByRole('radio', { name: 'Season' }).check();
    const reply = (await (await replied).json()) as { byHour: boolean; at: number[] };
    expect(reply.byHour).toBe(true);
    expect(reply.at.length).toBeLessThanOrEqual(1_001);
    expect(new URL(page.url()).hash).toContain('span=season');
    await page.context().close();
  });
});
