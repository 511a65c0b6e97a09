import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

/**
 * 20 arc-minutes at 3 m are 17.5 mm (trigonometry); a 10.1-inch screen of 1280 × 800 has 149
 * pixels an inch (√(1280² + 800²) / 10.1).
 */
const LEAST_LETTER_PX = (17.5 / 25.4) * 149;

needs('chromium')('the wall page', () => {
  let daemon: RunningDaemon;
  let browser: Browser;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    await rackWithCoat(daemon, 'North rack', 20);
    await rackWithCoat(daemon, 'South rack', 60);
    await rackWithCoat(daemon, 'Loft rack', 90);
    await daemon.call('POST', 'places', { name: 'Spare rack', kind: 'rack' });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const boardOf = (page: Page, rack: string) =>
    page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: rack }) });

  async function openWall(screen: keyof typeof screens, faults: string[] = []): Promise<Page> {
    const page = await openPage(browser, screens[screen], { faults });
    await page.goto(`${daemon.page}/`);
    await boardOf(page, 'Loft rack').getByText('Ready to coat again').waitFor();
    return page;
  }

  it('shows the verdict that a real reading led to, for which job and when', async () => {
    const faults: string[] = [];
    const page = await openWall('tablet', faults);
    // At a steady 20 °C a coat may be recoated after 2 to 3 days (common practice, no source).
    await boardOf(page, 'North rack').getByText('Wait to coat again').waitFor();
    await boardOf(page, 'South rack').getByText('Feel it to coat again').waitFor();
    await boardOf(page, 'Spare rack').getByText('Empty', { exact: true }).waitFor();
    const north = await boardOf(page, 'North rack').textContent();
    expect(north).toContain('coat 1 of 3');
    // The air in a word; its figures are read at a desk, on the page of the batch.
    expect(north).toContain('Air: can’t tell');
    expect(north).not.toMatch(/°C|\d %/);
    // New readings need no word about their age; old ones are told.
    expect(north).not.toContain('just now');
    expect(north).toMatch(/Likely (tomorrow|tonight|\w+day)/);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('follows a new reading without being touched', async () => {
    const page = await openWall('tablet');
    await daemon.publish('north-rack', 'air-temperature', [{ value: -4, at: Date.now() }]);
    await boardOf(page, 'North rack').getByText('It is too cold here').waitFor();
    await daemon.publish('north-rack', 'air-temperature', [{ value: 20, at: Date.now() }]);
    await boardOf(page, 'North rack').getByText('It is too cold').waitFor({ state: 'detached' });
    await page.context().close();
  });

  it('has letters that are read at three metres, on a tablet with four racks', async () => {
    const page = await openWall('tablet');
    const heights = await page
      .locator('.plank-letters path')
      .evaluateAll((words) => words.map((word) => word.getBoundingClientRect().height));
    expect(heights).toHaveLength(4);
    for (const height of heights) expect(height).toBeGreaterThanOrEqual(LEAST_LETTER_PX);
    await page.context().close();
  });

  it('shows four racks without scrolling, and never scrolls sideways', async () => {
    for (const screen of ['tablet', 'desk', 'phone'] as const) {
      const page = await openWall(screen);
      const over = await page.evaluate(() => ({
        across: document.documentElement.scrollWidth - innerWidth,
        down: document.documentElement.scrollHeight - innerHeight,
      }));
      expect(over.across, screen).toBeLessThanOrEqual(0);
      if (screen !== 'phone') expect(over.down, screen).toBeLessThanOrEqual(0);
      await page.context().close();
    }
  });

  it('names each verdict by word and by shape, not by colour alone', async () => {
    const page = await openWall('tablet');
    const shapes = await page
      .locator('.sign-mark')
      .evaluateAll((marks) => marks.map((mark) => mark.innerHTML));
    expect(new Set(shapes).size).toBe(4);
    await page.context().close();
  });

  it('says “no word from the shed” when the daemon is gone, and is whole again when it is back', async () => {
    const page = await openWall('tablet');
    const banner = page.getByRole('alert');
    expect(await banner.count()).toBe(0);
    await daemon.kill();
    await banner.getByText('No word from the shed').waitFor({ timeout: 60_000 });
    expect(await page.locator('.plank-letters-hollow').count()).toBe(4);
    expect(await boardOf(page, 'Loft rack').textContent()).toContain('Not sure any more');
    await daemon.restart();
    await banner.waitFor({ state: 'detached', timeout: 60_000 });
    await boardOf(page, 'Loft rack').getByText('Ready to coat again').waitFor();
    expect(await page.locator('.plank-letters-hollow').count()).toBe(0);
    await page.context().close();
  });

  it('shows twenty racks page by page, those that want something first', async () => {
    const spare = Array.from({ length: 16 }, (_, i) => `Spare rack ${i + 2}`);
    for (const name of spare) await daemon.call('POST', 'places', { name, kind: 'rack' });
    const page = await openWall('tablet');
    await page.getByText('1 of 5', { exact: true }).waitFor();
    const first = await page.getByRole('heading', { level: 2 }).allTextContents();
    expect(first).toEqual(expect.arrayContaining(['South rack', 'Loft rack']));
    for (let turns = 0; turns < 4; turns += 1) await page.keyboard.press('ArrowRight');
    await page.getByText('5 of 5', { exact: true }).waitFor();
    expect(await page.getByText(/^Also: /).textContent()).toContain('Loft rack – Ready');
    await page.context().close();
  });
});
