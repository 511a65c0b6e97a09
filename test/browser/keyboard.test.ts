import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { furnish } from './all-pages.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type Step, walk } from './keys.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

interface Walk {
  readonly what: string;
  readonly path: (batchId: string) => string;
  readonly ready: string;
  readonly steps: readonly Step[];
}

/** Past the head by the first key. */
const toThePage: readonly Step[] = [{ to: 'To the page' }, { press: 'Enter' }];

const walks: readonly Walk[] = [
  {
    what: 'a sensor is given its place and calibrated',
    path: () => '#/setup',
    ready: 'probe-7',
    steps: [
      ...toThePage,
      { at: 'Set up' },
      { to: 'Where probe-7 hangs' },
      { type: 'Spare' },
      { to: 'Place it' },
      { press: 'Enter' },
      { see: '3 sensors hang where they should' },
      { at: '3 sensors hang where they should' },
      { press: 'Enter' },
      { to: 'Calibrate probe-7' },
      { press: 'Enter' },
      { see: 'Against what' },
      { to: 'Against what' },
      { type: 'Off' },
      { to: 'Add to what it sends' },
      { type: 'much' },
      { press: 'Enter' },
      { refused: 'Add to what it sends' },
      { press: 'Control+a' },
      { type: '0.4' },
      { to: 'Calibrate' },
      { press: 'Enter' },
      { see: /offset.*0\.4/ },
      { back: 'Withdraw it' },
      { press: 'Enter' },
    ],
  },
  {
    what: 'a batch is started',
    path: () => '#/setup',
    ready: 'Start the batch',
    steps: [
      ...toThePage,
      { to: 'Compare' },
      { to: 'Name' },
      { type: 'East gable' },
      { to: 'Where the boards lie' },
      { type: 'Spare' },
      { to: 'Boards' },
      { type: 'a dozen' },
      { to: '22 × 145' },
      { press: 'Space' },
      { to: '4.2 m' },
      { press: 'Space' },
      { to: 'Start the batch' },
      { press: 'Enter' },
      { refused: 'Boards' },
      { press: 'Control+a' },
      { type: '12' },
      { to: 'Start the batch' },
      { press: 'Enter' },
      { at: 'East gable' },
    ],
  },
  {
    what: 'a coat is recorded, and taken back',
    path: (batchId) => `#/batch/${batchId}`,
    ready: 'What the boards may do',
    steps: [
      ...toThePage,
      { to: 'Record a coat' },
      { press: 'Enter' },
      { to: 'Record this coat' },
      { press: 'Enter' },
      { at: 'The rags, now' },
      { to: 'The rags are seen to' },
      { press: 'Enter' },
      { to: 'Recorded by mistake' },
      { press: 'Enter' },
      { to: 'Take it back' },
      { press: 'Enter' },
    ],
  },
  {
    what: 'boards are felt, and measured by hand',
    path: (batchId) => `#/batch/${batchId}`,
    ready: 'What the boards may do',
    steps: [
      ...toThePage,
      { to: 'No mark, no colour' },
      { press: 'Space' },
      { to: 'Record: No mark, no colour' },
      { press: 'Enter' },
      { see: /^Recorded: felt/ },
      { to: 'Take it back' },
      { press: 'Enter' },
      { see: 'Taken back' },
      { to: 'Hand meter' },
      { press: 'Enter' },
      { to: 'Board 1' },
      { type: '14.2' },
      { to: 'Record the figures' },
      { press: 'Enter' },
      { see: 'Recorded: 1 figure' },
      { at: 'Hand meter' },
    ],
  },
  {
    what: 'a pot is reckoned, and the list of what to buy',
    path: () => '#/pot',
    ready: 'What to buy',
    steps: [
      ...toThePage,
      { to: 'Area' },
      { type: 'much' },
      { press: 'Enter' },
      { refused: 'Area' },
      { back: 'For which boards' },
      { type: 'Boards of N' },
      { to: 'Reckon' },
      { press: 'Space' },
      { see: 'Pour' },
      { at: 'Reckon' },
      { to: 'Make the list' },
      { press: 'Space' },
      { at: 'Make the list' },
    ],
  },
  {
    what: 'what comes is asked about further boards',
    path: () => '#/ahead',
    ready: 'What this rests on',
    steps: [
      ...toThePage,
      { to: 'Further boards' },
      { type: '0' },
      { press: 'Enter' },
      { refused: 'Further boards, like those of the newest batch' },
      { press: 'Control+a' },
      { type: '40' },
      { to: 'When would they be done?' },
      { press: 'Enter' },
      { see: 'The boards you asked about' },
      { at: 'When would they be done?' },
    ],
  },
  {
    what: 'records are looked for, sorted and fetched',
    path: () => '#/records',
    ready: 'records',
    steps: [
      ...toThePage,
      { to: 'Words to look for' },
      { type: 'north' },
      { press: 'Enter' },
      { see: /^[2-9] records$/ },
      { to: 'Sort by What' },
      { press: 'Enter' },
      { at: 'Sort by What' },
      { to: 'These records as a CSV file' },
    ],
  },
  {
    what: 'a notice is marked as seen',
    path: () => '#/notices',
    ready: 'How they are told',
    steps: [...toThePage, { to: 'Seen' }, { press: 'Enter' }, { to: 'Seen' }, { press: 'Enter' }],
  },
  {
    what: 'the curves are looked at closer, and read off as a table',
    path: () => '#/air',
    ready: 'As a table (CSV)',
    steps: [
      ...toThePage,
      { to: 'Week' },
      { press: 'ArrowLeft' },
      { see: 'As a table (CSV)' },
      { to: 'Closer' },
      { press: 'Space', times: 2 },
      { to: 'All of it' },
      { press: 'Space' },
      { at: 'All of it' },
      { to: 'Look closer at' },
      { press: 'Shift+ArrowLeft', times: 2 },
      { see: /: Air: \d/ },
      { press: 'Escape' },
      { press: '+' },
      { press: 'ArrowLeft' },
      { to: 'The same as a table' },
      { press: 'Enter' },
      { see: 'Lowest, mean and highest' },
    ],
  },
  {
    what: 'the lock-up list is ticked',
    path: () => '#/lock-up',
    ready: 'Print the card',
    steps: [
      ...toThePage,
      { to: 'Who looks' },
      { type: 'the painter' },
      { to: 'Rags' },
      { press: 'Space' },
      { see: 'Seen to by the painter' },
      { at: 'Rags, gloves, paper, strainings, oily dust' },
      { to: 'just now' },
      { press: 'Space' },
    ],
  },
];

needs('chromium')('with the keys alone', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let batchId: string;
  beforeAll(async () => {
    daemon = await runDaemon();
    ({ batchId } = await furnish(daemon));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it.each(walks)('$what', async ({ path, ready, steps }) => {
    const faults: string[] = [];
    const page = await openPage(browser, screens.tablet, { faults });
    await page.goto(`${daemon.page}/${path(batchId)}`);
    await page.getByText(ready).first().waitFor();
    await walk(page, steps);
    // What is refused is refused on purpose, and a browser says so.
    expect(faults.filter((fault) => !fault.includes('status of 400'))).toEqual([]);
    await page.context().close();
  });

  it('a change asks for the PIN, and Escape gives the focus back to what was pressed', async () => {
    // As seen by the daemon a request that was passed on is not from the computer itself.
    const extraHTTPHeaders = { 'x-forwarded-for': '192.0.2.7' };
    const own = await openPage(browser, screens.tablet);
    await own.goto(`${daemon.page}/#/access`);
    await own.getByText('Choose a PIN').first().waitFor();
    await walk(own, [
      ...toThePage,
      { to: 'New PIN' },
      { type: '123456' },
      { press: 'Enter' },
      { refused: 'New PIN' },
      { press: 'Control+a' },
      { type: 'larch-27' },
      { press: 'Enter' },
      { see: 'This device is logged in and may do everything.' },
    ]);
    await own.context().close();
    const phone = await openPage(browser, screens.tablet, { extraHTTPHeaders });
    await phone.goto(`${daemon.page}/#/setup`);
    await phone.getByText('Start the batch').waitFor();
    await walk(phone, [
      ...toThePage,
      { to: 'Name' },
      { type: 'Long loft' },
      { to: 'Make the place' },
      { press: 'Enter' },
      { see: 'This needs the PIN' },
      { at: 'PIN' },
      { press: 'Escape' },
      { at: 'Make the place' },
      { press: 'Enter' },
      { at: 'PIN' },
      { type: 'larch-27' },
      { press: 'Enter' },
      { see: /^Made: Long loft/ },
      { at: 'Make the place' },
    ]);
    await phone.context().close();
  });
});
