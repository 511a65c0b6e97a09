import type { Reason } from '../contract/gate.ts';
import type { PlaceKind } from '../contract/place.ts';
import { sentence } from '../wording/english.ts';
import { localTime } from './local-time.ts';

/** A stretch in which a coat lay at a kind of place; `toAt` is now for the present one. */
export interface Exposed {
  kind: PlaceKind;
  fromAt: number;
  toAt: number;
}

const dayMs = 86_400_000;
/** After so many days in the weather a coat is washed and scuffed first. Common practice, no source. */
const outdoorDays = 14;
/** A stay this long that reaches over the turn of the season has wintered. Assumption. */
const winterDays = 60;

/**
 * What to do before the next coat on one that has stood for a while. There is no day after which it
 * is too late: oil paint takes the next coat as long as it is clean and sound.
 *
 * **Source:** common practice, no source; the paint maker’s sheet comes first.
 *
 * @param isWinter - whether a moment lies in the site’s cold season
 */
export function recoatWindow(
  stays: readonly Exposed[],
  isWinter: (at: number) => boolean,
): Reason[] {
  const outside = stays.filter(({ kind }) => kind === 'wall' || kind === 'outdoors');
  const days = outside.reduce((sum, { fromAt, toAt }) => sum + (toAt - fromAt) / dayMs, 0);
  if (days <= outdoorDays) return [];
  const wintered = outside.some(
    ({ fromAt, toAt }) => toAt - fromAt >= winterDays * dayMs && hasWinter(fromAt, toAt, isWinter),
  );
  const wash = sentence('recoat-wash', { days: Math.floor(days) });
  return wintered ? [wash, sentence('recoat-winter', {})] : [wash];
}

/** Whether a moment lies in the three cold months of its hemisphere, by the site’s calendar. */
export function isColdSeason(at: number, timeZone: string, hemisphere: 'north' | 'south'): boolean {
  const month = Number(localTime(at, timeZone).day.slice(5, 7));
  return (hemisphere === 'north' ? [12, 1, 2] : [6, 7, 8]).includes(month);
}

function hasWinter(fromAt: number, toAt: number, isWinter: (at: number) => boolean): boolean {
  for (let at = fromAt; at <= toAt; at += 7 * dayMs) if (isWinter(at)) return true;
  return isWinter(toAt);
}
