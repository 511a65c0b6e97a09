import { effect } from '@preact/signals';
import type { DeviceChoice, DeviceKeeper } from './device-choice.ts';

export type Theme = 'day' | 'dusk' | 'night';

/** So long before and after the night the light is warm and dim, h. */
const DUSK_HOURS = 2;

/**
 * In which light the page is shown. Light over wet boards draws insects, so by the clock it is night whatever
 * the device prefers; where the sun stands is not known without a position.
 *
 * @param hour - of the device’s own clock, 0 to 23
 * @param prefersDark - what the device is set to
 */
export function themeAt(
  hour: number,
  prefersDark: boolean,
  { light, nightFrom, nightUntil }: Pick<DeviceChoice, 'light' | 'nightFrom' | 'nightUntil'>,
): Theme {
  if (light !== 'auto') return light;
  if (prefersDark || isWithin(hour, nightFrom, nightUntil)) return 'night';
  // No night at all has no dusk either.
  const isDusk =
    nightFrom !== nightUntil && isWithin(hour, nightFrom - DUSK_HOURS, nightUntil + DUSK_HOURS);
  return isDusk ? 'dusk' : 'day';
}

/** Whether an hour lies from one hour until another, across midnight too. */
function isWithin(hour: number, from: number, until: number): boolean {
  const after = (later: number) => (((later - from) % 24) + 24) % 24;
  return after(hour) < after(until);
}

/**
 * Keeps the page in the light of the hour and of what this device was told.
 *
 * @param root - the element whose `data-light` the style sheet reads
 * @returns stops watching
 */
export function keepTheme(root: HTMLElement, { choice }: Pick<DeviceKeeper, 'choice'>): () => void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const paper = matchMedia('print');
  // What is drawn on a canvas knows no style for paper: it is drawn anew by day before a print.
  let isPrinting = false;
  const set = () => {
    const hour = new Date().getHours();
    const light = isPrinting || paper.matches ? 'day' : themeAt(hour, dark.matches, choice.value);
    if (root.dataset.light !== light) root.dataset.light = light;
  };
  const stop = effect(set);
  const print = ({ type }: Event) => {
    isPrinting = type === 'beforeprint';
    set();
  };
  const prints = ['beforeprint', 'afterprint'] as const;
  for (const type of prints) addEventListener(type, print);
  for (const media of [dark, paper]) media.addEventListener('change', set);
  const timer = setInterval(set, 60_000);
  return () => {
    stop();
    for (const type of prints) removeEventListener(type, print);
    for (const media of [dark, paper]) media.removeEventListener('change', set);
    clearInterval(timer);
  };
}
