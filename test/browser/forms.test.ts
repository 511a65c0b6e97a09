import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { furnish } from './all-pages.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

const nonsense = {
  nothing: '',
  absurd: '-1e99',
  'too long': 'lång '.repeat(1200).trim(),
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
  { what: 'a plan', path: setUp, open: ['Change this plan'], send: 'Make version', refuses: all },
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

  it.each(forms)('$what is told beside its field, which has the focus, and stays', async (form) => {
    await page.goto('about:blank');
    await page.goto(`${daemon.page}/${form.path(batchId)}`);
    for (const name of form.open ?? []) await opener(page, name).click();
    const send = page.getByRole('button', { name: form.send }).last();
    const whole = page.locator('form').filter({ has: send });
    const typed = whole.locator('input[type="text"], input[type="password"], textarea');
    for (const kind of form.refuses) {
      await send.waitFor();
      const fields = await typed.filter({ visible: true }).all();
      expect(fields.length).toBeGreaterThan(0);
      for (const field of fields) await field.fill(nonsense[kind]);
      await send.focus();
      await send.click();
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
      expect(told).not.toMatch(/9,007|batchId|\/how|undefined|NaN/);
      for (const field of fields) expect(await field.inputValue()).toBe(nonsense[kind]);
    }
  });
});

function opener(page: Page, name: string): Locator {
  return page
    .getByRole('button', { name })
    .or(page.locator('summary', { hasText: name }))
    .first();
}
