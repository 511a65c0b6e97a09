import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { furnish } from './all-pages.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

const lines = 'input[type="text"], input[type="password"], textarea';
const dates = 'input[type="datetime-local"]';
const nonsense = {
  nothing: { into: lines, typed: '' },
  absurd: { into: lines, typed: '-1e99' },
  'too long': { into: lines, typed: 'lång '.repeat(1200).trim() },
  'no date': { into: dates, typed: '' },
  'a date to come': { into: dates, typed: '2999-01-01T12:00' },
  'a year of five digits': { into: dates, typed: '29999-01-01T12:00' },
} as const;
type Nonsense = keyof typeof nonsense;

interface SomeForm {
  readonly what: string;
  readonly path: (batchId: string) => string;
  /** Buttons and folds on the way to it. */
  readonly open?: readonly string[];
  /** Its button. */
  readonly send: string;
  /** What it may not take; the rest is nobody’s business, such as an odd name or an empty remark. */
  readonly refuses: readonly Nonsense[];
}

const all: readonly Nonsense[] = ['nothing', 'absurd', 'too long'];
const figures: readonly Nonsense[] = ['absurd', 'too long'];
const days: readonly Nonsense[] = ['no date', 'a date to come', 'a year of five digits'];
const ofBatch = (batchId: string) => `#/batch/${batchId}`;
const setUp = () => '#/setup';

const forms: readonly SomeForm[] = [
  { what: 'a place', path: setUp, send: 'Make the place', refuses: all },
  { what: 'a batch', path: setUp, send: 'Start the batch', refuses: all },
  { what: 'a tin', path: setUp, send: 'Enter this tin', refuses: all },
  {
    what: 'a change of a place',
    path: setUp,
    open: ['3 places, to change', 'Change North rack'],
    send: 'Keep the change',
    refuses: all,
  },
  {
    what: 'a plan',
    path: setUp,
    open: ['the usual one', 'Change this plan'],
    send: 'Make version',
    refuses: all,
  },
  {
    what: 'a calibration',
    path: setUp,
    open: ['Calibrate north-rack'],
    send: 'Calibrate',
    refuses: all,
  },
  {
    what: 'a coat',
    path: ofBatch,
    open: ['Record a coat', 'Paint used'],
    send: 'Record this coat',
    refuses: figures,
  },
  {
    what: 'a remark',
    path: ofBatch,
    open: ['Remark'],
    send: 'Record the remark',
    refuses: ['too long'],
  },
  {
    what: 'a hand meter',
    path: ofBatch,
    open: ['Hand meter'],
    send: 'Record the figures',
    refuses: all,
  },
  {
    what: 'boards that went',
    path: ofBatch,
    open: ['Some went'],
    send: 'Split them off',
    refuses: all,
  },
  {
    what: 'moisture at the brush',
    path: () => '#/brush',
    send: 'Record the figures',
    refuses: all,
  },
  { what: 'a pot', path: () => '#/pot', send: 'Reckon', refuses: all },
  { what: 'what to buy', path: () => '#/pot', send: 'Make the list', refuses: figures },
  {
    what: 'further boards',
    path: () => '#/ahead',
    send: 'When would they be done?',
    refuses: figures,
  },
  {
    what: 'a rule',
    path: () => '#/topics/farm%2Fattic%2Ftemp_f',
    send: 'Save the rule',
    refuses: all,
  },
  {
    what: 'the PIN',
    path: () => '#/access',
    send: 'Set the PIN',
    refuses: ['nothing', 'too long'],
  },
  {
    what: 'a name at the broker',
    path: () => '#/access',
    open: ['Another name'],
    send: 'Make a name and a password',
    refuses: ['nothing', 'too long'],
  },
  {
    what: 'the site',
    path: () => '#/first-run/site',
    send: 'Keep the name',
    refuses: ['nothing', 'too long'],
  },
  { what: 'a comparison', path: setUp, send: 'Compare', refuses: days },
  {
    what: 'a calibration from a day on',
    path: setUp,
    open: ['Calibrate north-rack'],
    send: 'Calibrate',
    refuses: ['a date to come', 'a year of five digits'],
  },
  {
    what: 'the air from and to',
    path: () => '#/air',
    open: ['From – to'],
    send: 'Show',
    refuses: ['no date', 'a year of five digits'],
  },
  {
    what: 'a move',
    path: ofBatch,
    open: ['Moved', 'At another time'],
    send: 'Record the move',
    refuses: days,
  },
  {
    what: 'boards that are put together',
    path: ofBatch,
    open: ['Put together', 'At another time'],
    send: 'Put them together',
    refuses: days,
  },
  {
    what: 'a photo that was not taken',
    path: ofBatch,
    open: ['Photo'],
    send: 'Keep the photo',
    refuses: ['nothing'],
  },
  {
    what: 'a setting',
    path: () => '#/settings/cure',
    open: ['cure.datumC', 'Change cure.datumC'],
    send: 'Keep it',
    refuses: all,
  },
];

/** Forms for whoever is not logged in; a wrong PIN counts as a try, so that there are not many. */
const formsOfStrangers: readonly SomeForm[] = [
  { what: 'the PIN to log in with', path: () => '#/access', send: 'Log in', refuses: all },
  { what: 'the code of a tablet', path: () => '#/access', send: 'Pair this device', refuses: all },
];

needs('chromium')('nonsense that is typed for', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  let batchId: string;

  beforeAll(async () => {
    daemon = await runDaemon();
    ({ batchId } = await furnish(daemon));
    browser = await launchBrowser();
    page = await openPage(browser, screens.tablet);
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it.each(forms)('$what is told beside its field, which has the focus, and stays', (form) =>
    refuse(page, form),
  );

  it('a comparison of one sensor is told beside the sensors', async () => {
    await page.goto('about:blank');
    await page.goto(`${daemon.page}/#/setup`);
    const boxes = page.locator('.compare-sensor input');
    await boxes.first().waitFor();
    for (const box of await boxes.all()) await box.uncheck();
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.locator('.compare-sensor input[aria-invalid="true"]:focus').waitFor();
    await page.getByText('Choose two sensors or more.').waitFor();
  });

  it('a limit is told in the unit of its field, and taken when it is typed', async () => {
    const american = await openPage(browser, screens.tablet, { locale: 'en-US' });
    await american.goto(`${daemon.page}/#/setup`);
    const send = american.getByRole('button', { name: 'Enter this tin' });
    const form = american.locator('form').filter({ has: send });
    const line = form.locator('.field').filter({ hasText: 'gal' });
    await line.locator('input[type="text"]').fill('9999');
    await send.click();
    // 1000 L; 3.785 411 784 L to the US gallon, NIST Special Publication 811 (2008), B.8, from memory.
    await line.getByText('must be at most 264.17').waitFor();
    await line.locator('input[type="text"]').fill('264.17');
    await send.click();
    await line.locator('.field-fault').waitFor({ state: 'detached' });
    await american.context().close();
  });

  describe('by whoever is not logged in', () => {
    let stranger: Page;
    beforeAll(async () => {
      await daemon.call('POST', 'pin', { pin: 'larch-27' });
      // As seen by the daemon a request that was passed on is not from the computer itself.
      const extraHTTPHeaders = { 'x-forwarded-for': '192.0.2.7' };
      stranger = await openPage(browser, screens.tablet, { extraHTTPHeaders });
    });

    it.each(formsOfStrangers)('$what is told beside its field, and stays', (form) =>
      refuse(stranger, form),
    );
  });

  async function refuse(on: Page, form: SomeForm): Promise<void> {
    await on.goto('about:blank');
    await on.goto(`${daemon.page}/${form.path(batchId)}`);
    for (const name of form.open ?? []) await opener(on, name).click();
    const send = on.getByRole('button', { name: form.send }).last();
    const whole = on.locator('form').filter({ has: send });
    for (const kind of form.refuses) {
      const { into, typed } = nonsense[kind];
      await send.waitFor();
      const fields = whole.locator(into).filter({ visible: true });
      expect(await fields.count()).toBeGreaterThan(0);
      // All at once: a plan has forty of them.
      await fields.evaluateAll((all, text) => {
        for (const one of all as HTMLInputElement[]) {
          one.value = text;
          one.dispatchEvent(new Event('input', { bubbles: true }));
        }
      }, typed);
      await send.focus();
      await send.click();
      await whole.locator('[aria-invalid="true"]:focus').waitFor();
      const faulty = whole.locator('[aria-invalid="true"]').first();
      await expect.poll(() => faulty.evaluate((one) => one === document.activeElement)).toBe(true);
      const told = await faulty.evaluate((one) =>
        (one.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent ?? '')
          .join(' '),
      );
      expect(told.length, kind).toBeGreaterThan(5);
      // Limits of a computer and names that programs have for fields tell a person nothing.
      expect(told).not.toMatch(/9,007|batchId|\/how|undefined|NaN|T08:00/);
      const kept = await fields.evaluateAll((all) =>
        (all as HTMLInputElement[]).map((one) => one.value),
      );
      expect([...new Set(kept)]).toEqual([typed]);
    }
  }
});

function opener(page: Page, name: string): Locator {
  return page
    .getByRole('button', { name })
    .or(page.locator('summary, .choice-option', { hasText: name }))
    .first();
}
