import { type Browser, chromium, type Page } from 'playwright-core';
import { programPath } from '../house/needs.ts';

/**
 * Without these a new window loads some two hundred files of the browser’s own address bar, beside the
 * page that is tested: a slow machine has seconds to do for them.
 */
const ADDRESS_BAR = ['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'];
/** What Playwright turns off, as far as it concerns these tests: of two such lists the later counts alone. */
const AS_PLAYWRIGHT = [
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
];

/** What a headless browser on a closed network must not try. */
const QUIET = [
  `--disable-features=${[...ADDRESS_BAR, ...AS_PLAYWRIGHT].join(',')}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface Screen {
  readonly width: number;
  readonly height: number;
}

/** A 10-inch wall tablet, a phone, a desk or television. */
export const screens = {
  tablet: { width: 1280, height: 800 },
  phone: { width: 390, height: 844 },
  desk: { width: 1920, height: 1080 },
} as const satisfies Record<string, Screen>;

/** Debian’s Chromium, headless. */
export function launchBrowser(): Promise<Browser> {
  const executablePath = programPath('chromium');
  if (executablePath === null) throw new Error('chromium is not installed');
  return chromium.launch({ executablePath, args: QUIET });
}

/**
 * A page of its own that fails the test on anything the browser complains of.
 *
 * @param faults - complaints are added here
 */
export async function openPage(
  browser: Browser,
  screen: Screen,
  look: {
    colorScheme?: 'light' | 'dark';
    locale?: string;
    extraHTTPHeaders?: Record<string, string>;
    faults?: string[];
    /** Only a test of the service worker wants one: it fetches all files of the app. */
    serviceWorkers?: 'allow';
    permissions?: string[];
    hasTouch?: boolean;
  } = {},
): Promise<Page> {
  const { faults, ...given } = look;
  const context = await browser.newContext({
    viewport: screen,
    locale: 'en-GB',
    timezoneId: noonZone(new Date().getUTCHours()),
    serviceWorkers: 'block',
    ...given,
  });
  const page = await context.newPage();
  page.on('pageerror', (error) => faults?.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') faults?.push(message.text());
  });
  return page;
}

/** A time zone in which it is about noon, so that night by the clock comes into no test. */
function noonZone(utcHour: number): string {
  const ahead = 12 - utcHour;
  // The sign of these zones is turned round: Etc/GMT-5 is five hours ahead.
  return ahead >= 0 ? `Etc/GMT-${ahead}` : `Etc/GMT+${-ahead}`;
}
