import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import type { Notice } from '../../daemon/contract/notice.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { decoded } from './read-code.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

/** CSS pixels in a millimetre. **Source:** CSS Values and Units 4, section 6.2: 1in = 2.54cm = 96px. */
const pxPerMm = 96 / 25.4;

needs('chromium')('the pages at the bench and at the door', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batch: Batch;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    ({ batch } = await rackWithCoat(daemon, 'North rack', 2));
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  async function open(path: string, faults: string[] = []): Promise<Page> {
    const page = await openPage(browser, screens.desk, { faults });
    await page.goto(`${daemon.page}/${path}`);
    return page;
  }

  async function box(locator: Locator) {
    const found = await locator.boundingBox();
    if (!found) throw new Error('nothing is drawn');
    return { widthMm: found.width / pxPerMm, heightMm: found.height / pxPerMm, ...found };
  }

  it('print a strip at true size, with its marks where the pot wants them', async () => {
    const faults: string[] = [];
    const query = `batchId=${batch.id}&potDiameterMm=200&potHeightMm=250`;
    const { pot } = await daemon.call<MixtureReply>('GET', `mixture?${query}`);
    const page = await open(`#/print/strip?${query}`, faults);
    const strip = page.locator('svg.strip');
    await strip.waitFor();
    expect((await box(page.locator('svg.strip-check'))).widthMm).toBeCloseTo(100, 1);
    const { y, height } = await box(strip);
    const marks = await page.locator('svg.strip line.strip-mark').all();
    const fromFootMm: number[] = [];
    for (const mark of marks) {
      const line = await box(mark);
      fromFootMm.push((y + height - line.y - line.height / 2) / pxPerMm);
    }
    expect(fromFootMm).toHaveLength(2);
    pot?.marks.forEach(({ stickCm }, i) => {
      // A stick is read to half a millimetre.
      expect(Math.abs((fromFootMm[i] ?? 0) - 10 * stickCm)).toBeLessThan(0.5);
    });
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('keep that size on paper: nothing but the sheet is printed', async () => {
    const page = await open(`#/print/strip?batchId=${batch.id}&potDiameterMm=200`);
    await page.locator('svg.strip').waitFor();
    await page.emulateMedia({ media: 'print' });
    expect((await box(page.locator('svg.strip-check'))).widthMm).toBeCloseTo(100, 1);
    expect(await page.getByRole('navigation', { name: 'Pages' }).isVisible()).toBe(false);
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.context().close();
  });

  it.each([
    ['rack', '', 45],
    ['label', '&potDiameterMm=200', 30],
  ])('put a code on the %s card that leads to the boards', async (sheet, more, mm) => {
    const page = await open(`#/print/${sheet}?batchId=${batch.id}${more}`);
    const code = page.locator('svg.qr');
    await code.waitFor();
    expect((await box(code)).widthMm).toBeCloseTo(mm, 0);
    await page.getByLabel('Address by which phones reach').fill('http://shed.local:8080/');
    await page.getByLabel('Address by which phones reach').blur();
    expect(await decoded(page, code)).toBe(`http://shed.local:8080/#/batch/${batch.id}`);
    await page.context().close();
  });

  it('hold the card for the door on one sheet of A4', async () => {
    const page = await open('#/print/door');
    await page.getByText('Before you lock up').waitFor();
    const { widthMm, heightMm } = await box(page.locator('.door-card'));
    expect(widthMm).toBeCloseTo(190, 0);
    // A4 is 297 mm high (ISO 216), less 10 mm of margin twice.
    expect(heightMm).toBeLessThanOrEqual(277);
    await page.context().close();
  });

  it('show the centimetres for the pot at hand', async () => {
    const page = await open('#/pot');
    await page.getByLabel('For which boards').selectOption({ label: batch.name });
    await page.getByLabel('Pot, inside width').fill('20');
    await page.getByRole('button', { name: 'Reckon' }).click();
    const { pot } = await daemon.call<MixtureReply>(
      'GET',
      `mixture?batchId=${batch.id}&potDiameterMm=200&lossPercent=5`,
    );
    const [first] = pot?.marks ?? [];
    await page.getByText(`${first?.stickCm.toFixed(1)} cm`, { exact: true }).waitFor();
    // Once this coat is recorded the next one is another; the sheet stays that of this one.
    const strip = await page.getByRole('link', { name: 'Print the strip' }).getAttribute('href');
    expect(strip).toContain('coat=1');
    await page.context().close();
  });

  it('take inches and show marks by the tape where the units are US', async () => {
    const page = await openPage(browser, screens.desk, { locale: 'en-US' });
    await page.goto(`${daemon.page}/#/pot`);
    await page.getByLabel('For which boards').selectOption({ label: batch.name });
    // 7 7/8 in are 200.025 mm: an inch is 25.4 mm.
    await page.getByLabel('Pot, inside width').fill('7 7/8');
    await page.getByRole('button', { name: 'Reckon' }).click();
    const { pot } = await daemon.call<MixtureReply>(
      'GET',
      `mixture?batchId=${batch.id}&potDiameterMm=200.025&lossPercent=5`,
    );
    const sixteenths = Math.round(((pot?.marks[0]?.stickCm ?? 0) / 2.54) * 16);
    const text = (await page.locator('.pot-cm').first().textContent()) ?? '';
    const shown = text.replace(/\s*in$/, '');
    const [whole = 0, over = 0, under = 1] = shown.split(/[\s/]/).map(Number);
    expect((whole + over / under) * 16).toBeCloseTo(sixteenths, 9);
    await page.getByRole('link', { name: 'Print the strip' }).click();
    await page.locator('svg.strip').waitFor();
    expect((await box(page.locator('svg.strip-check'))).widthMm).toBeCloseTo(101.6, 1);
    await page.context().close();
  });

  it('say whether it is fit to brush, and take in five figures of the meter', async () => {
    const faults: string[] = [];
    const page = await open('#/brush', faults);
    await page.getByLabel('Which boards').selectOption({ label: batch.name });
    await page.getByText('Nobody has measured the timber').waitFor();
    for (const [i, figure] of ['12,1', '13', '12.4', '14', '16,8'].entries()) {
      await page.getByLabel(`Board ${i + 1}`).fill(figure);
    }
    await page.getByRole('button', { name: 'Record the figures' }).click();
    await page.getByText('the worst board has 16.8 %, at most 16 %').waitFor();
    await page.locator('.fit-large').getByText('Not now').waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('tick the rags, and the notice about them is over', async () => {
    const page = await open('#/lock-up');
    await page.getByLabel('Who looks').fill('K.');
    await page.getByLabel('Rags, gloves, paper').click();
    await page.getByText('Seen to by K.').waitFor();
    const notices = await daemon.call<Notice[]>('GET', 'notices');
    expect(notices.filter(({ kind, clearedAt }) => kind === 'rags' && !clearedAt)).toEqual([]);
    await page.goto(`${daemon.page}/#/notices`);
    await page.getByRole('heading', { name: 'Over' }).waitFor();
    await page.context().close();
  });
});
