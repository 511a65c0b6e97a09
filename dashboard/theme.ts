export type Theme = 'day' | 'night';

/** Light over wet boards draws insects, so from 21 to 6 it is night whatever the device prefers. */
const NIGHT_FROM = 21;
const NIGHT_UNTIL = 6;

/**
 * @param hour - of the device’s own clock, 0 to 23
 * @param prefersDark - what the device is set to
 */
export function themeAt(hour: number, prefersDark: boolean): Theme {
  return prefersDark || hour >= NIGHT_FROM || hour < NIGHT_UNTIL ? 'night' : 'day';
}

/**
 * Keeps the page in the light of the hour.
 *
 * @param root - the element whose `data-light` the style sheet reads
 * @returns stops watching
 */
export function keepTheme(root: HTMLElement): () => void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const set = () => {
    root.dataset.light = themeAt(new Date().getHours(), dark.matches);
  };
  set();
  dark.addEventListener('change', set);
  const timer = setInterval(set, 60_000);
  return () => {
    dark.removeEventListener('change', set);
    clearInterval(timer);
  };
}
