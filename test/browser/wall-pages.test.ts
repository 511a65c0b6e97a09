import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { DeviceChoice } from '../../dashboard/device-choice.ts';
import { needs } from '../house/needs.ts';
import { violations } from './axe.ts';
import { launchBrowser, openPage, type Screen, screens } from './browser.ts';
import { inventedWall } from './invented-wall.ts';
import { lostText } from './lost-text.ts';
import { type StubDaemon, stubDaemon } from './stub-daemon.ts';

/** As in `wall.test.ts`: 20 arc-minutes at 3 m on a 10.1-inch screen. */
const LEAST_LETTER_PX = (17.5 / 25.4) * 149;

const walls: Readonly<Record<string, Screen>> = {
  tablet: screens.tablet,
  'tablet upright': { width: 800, height: 1280 },
  television: screens.desk,
  'large television': { width: 3840, height: 2160 },
};

needs('chromium')('a wall of many racks', () => {
  let browser: Browser;
  let stub: StubDaemon;

  beforeAll(async () => {
    browser = await launchBrowser();
    stub = await stubDaemon(inventedWall(20, Date.now()));
  });

  afterAll(async () => {
    await browser?.close();
    await stub?.close();
  });

  interface Opening {
    readonly screen?: Screen;
    readonly racks?: number;
    readonly told?: Partial<DeviceChoice>;
    readonly faults?: string[];
    /** Whether the device’s clock is the test’s. */
    readonly isTimed?: boolean;
  }

  async function openWall(opening: Opening = {}): Promise<Page> {
    const { screen = screens.tablet, racks = 20, told = {}, faults = [] } = opening;
    stub.push(inventedWall(racks, Date.now()));
    const page = await openPage(browser, screen, { faults });
    if (opening.isTimed === true) await page.clock.install();
    await page.addInitScript(
      (choice) => localStorage.setItem('boardcure.screen', choice),
      JSON.stringify({ light: 'day', ...told }),
    );
    await page.goto(`${stub.page}/`);
    await page.locator('.wall-board').first().waitFor();
    return page;
  }

  const turner = (page: Page) => page.getByRole('navigation', { name: 'Pages of the wall' });
  const shown = (page: Page) =>
    turner(page)
      .getByText(/^\d+ of \d+$/)
      .textContent();
  const racksOn = (page: Page) => page.getByRole('heading', { level: 2 }).allTextContents();

  it.each(Object.entries(walls))(
    'has letters that are read at three metres and all its text, without scrolling: %s',
    async (_, screen) => {
      for (const racks of [1, 8, 20]) {
        const page = await openWall({ screen, racks });
        const pages = racks > 1 && (await turner(page).count()) > 0 ? 2 : 1;
        for (let i = 0; i < pages; i += 1) {
          const seen = await page.evaluate(() => ({
            letters: [...document.querySelectorAll('.plank-letters path')].map(
              (word) => word.getBoundingClientRect().height,
            ),
            over: ['html', '.wall'].map((one) => {
              const box = document.querySelector(one);
              return box === null ? 0 : box.scrollHeight - box.clientHeight;
            }),
          }));
          expect(seen.letters.length).toBeGreaterThan(0);
          expect(Math.min(...seen.letters), `${racks} racks`).toBeGreaterThanOrEqual(
            LEAST_LETTER_PX,
          );
          expect(seen.over, `${racks} racks`).toEqual([0, 0]);
          expect(await lostText(page)).toEqual([]);
          await page.keyboard.press('ArrowRight');
        }
        await page.context().close();
      }
    },
  );

  it('shows every rack on one of its pages, trouble first, and names it on the others', async () => {
    const faults: string[] = [];
    const page = await openWall({ faults });
    expect(await shown(page)).toMatch(/^1 of \d+$/);
    const pages = Number((await shown(page))?.split(' of ')[1]);
    const seen: string[] = [];
    for (let i = 0; i < pages; i += 1) {
      seen.push(...(await racksOn(page)));
      await turner(page).getByRole('button', { name: 'Next racks' }).click();
    }
    expect(seen).toHaveLength(20);
    expect(new Set(seen).size).toBe(20);
    // Poor air, and the two that are held.
    expect(seen.slice(0, 3).sort()).toEqual(['Loft', 'North rack 2', 'North rack 4']);
    expect(await shown(page)).toMatch(/^1 of/);
    await page.keyboard.press('ArrowLeft');
    expect(await shown(page)).toBe(`${pages} of ${pages}`);
    await turner(page)
      .getByRole('button', { name: /^Also: Loft – Needs a look/ })
      .click();
    expect(await racksOn(page)).toContain('Loft');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('turns by itself, stands still for whoever touches it, and turns on later', async () => {
    const page = await openWall({ isTimed: true });
    expect(await shown(page)).toMatch(/^1 of/);
    await page.clock.runFor(17_000);
    expect(await shown(page)).toMatch(/^2 of/);
    await page.mouse.move(400, 400);
    await page.clock.runFor(60_000);
    expect(await shown(page)).toMatch(/^2 of/);
    await page.clock.runFor(80_000);
    expect(await shown(page)).not.toMatch(/^2 of/);
    await page.keyboard.press('Tab');
    await turner(page).getByRole('button', { name: 'Next racks' }).focus();
    const before = await shown(page);
    await page.clock.runFor(300_000);
    expect(await shown(page)).toBe(before);
    await page.context().close();
  });

  it('turns by hand alone where that was chosen or less motion is asked for', async () => {
    for (const [told, reducedMotion] of [
      [{ turnSeconds: 0 }, 'no-preference'],
      [{}, 'reduce'],
    ] as const) {
      const page = await openWall({ isTimed: true, told });
      await page.emulateMedia({ reducedMotion });
      await page.reload();
      await page.locator('.wall-board').first().waitFor();
      await page.clock.runFor(100_000);
      expect(await shown(page)).toMatch(/^1 of/);
      await page.keyboard.press('ArrowRight');
      expect(await shown(page)).toMatch(/^2 of/);
      await turner(page).getByRole('button', { name: 'Turn by itself' }).waitFor();
      await page.context().close();
    }
  });

  it.each(['day', 'dusk', 'night'] as const)('breaks no rule of WCAG 2.2 AA: %s', async (light) => {
    const page = await openWall({ told: { light } });
    expect(await page.evaluate(() => document.documentElement.dataset.light)).toBe(light);
    for (let i = 0; i < 3; i += 1) {
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press('ArrowRight');
    }
    await page.context().close();
  });

  it('loses no text where it is set twice as large', async () => {
    const page = await openWall({ racks: 8 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await page.waitForFunction(
      () => getComputedStyle(document.querySelector('.wall-place') as Element).fontSize === '48px',
    );
    expect(await lostText(page)).toEqual([]);
    await page.context().close();
  });

  it('moves by a few pixels within hours, unless it is in somebody’s hand', async () => {
    const page = await openWall({ isTimed: true });
    const place = () =>
      page.locator('.wall-boards').evaluate((boards) => {
        const { x, y } = boards.getBoundingClientRect();
        return { x: Math.round(x), y: Math.round(y) };
      });
    const first = await place();
    await page.clock.fastForward('01:30:00');
    await page.clock.runFor(2_000);
    const later = await place();
    expect(later).not.toEqual(first);
    expect(Math.max(Math.abs(later.x - first.x), Math.abs(later.y - first.y))).toBeLessThanOrEqual(
      8,
    );
    await turner(page).getByRole('button', { name: 'Next racks' }).focus();
    await page.clock.fastForward('00:50:00');
    await page.clock.runFor(2_000);
    expect(await place()).toEqual(later);
    await page.context().close();
  });

  it('asks anew when the device wakes, and is loaded anew after an update, but once', async () => {
    const page = await openWall({ racks: 4 });
    const asked = page.waitForRequest(/\/api\/v1\/overview$/);
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await asked;
    stub.changePage((html) => html.replace(/(src="\.\/assets\/index-[^"]+\.js)"/, '$1?later"'));
    const loaded = page.waitForEvent('load');
    stub.breakStreams();
    await loaded;
    await page.locator('.wall-board').first().waitFor();
    await page.evaluate(() => {
      (window as { isSame?: boolean }).isSame = true;
    });
    // A page whose form may be half filled in stays; it is loaded anew when it is left.
    await page.goto(`${stub.page}/#/cautions`);
    stub.changePage((html) => html);
    const looked = page.waitForResponse(`${stub.page}/`);
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await looked;
    expect(await page.evaluate(() => (window as { isSame?: boolean }).isSame)).toBe(true);
    const left = page.waitForEvent('load');
    await page.evaluate(() => {
      location.hash = '#/';
    });
    await left;
    await page.context().close();
  });
});
