import { within } from './argument-range.ts';

/** Furthest date either side of 1970, ms. **Source:** ECMA-262, time values. */
const LAST_DATE_MS = 8.64e15;
const MS_PER_HOUR = 3_600_000;
/** Values further apart are not joined by a line, h: a gap, as for the cure sum. Assumption. */
const LONGEST_GAP_HOURS = 3;

/** Area under the line and hours it covers, hour by hour, the youngest first. */
type Areas = { readonly area: Float64Array; readonly covered: Float64Array };

/** Adds a straight stretch, from `older` hours ago to `younger` hours ago. */
function addStretch(areas: Areas, older: number, from: number, younger: number, to: number): void {
  const last = Math.min(areas.area.length, Math.ceil(older));
  for (let age = Math.floor(younger); age < last; age++) {
    const start = Math.min(older, age + 1);
    const end = Math.max(younger, age);
    const share = (older - start + (older - end)) / (2 * (older - younger));
    areas.area[age] = (areas.area[age] as number) + (start - end) * (from + share * (to - from));
    areas.covered[age] = (areas.covered[age] as number) + (start - end);
  }
}

/**
 * Means over whole hours that end at a given time, so that no time zone is needed for a daily cycle.
 *
 * @param readings - in any order; later ones than `endAt` are left out
 * @param value - what is read off each; null where it was not measured
 * @param endAt - end of the last hour, UTC epoch ms
 * @param hours - how many hours to look back, 1 or more
 * @returns oldest first, the last ending at `endAt`; values run straight from one to the next; null
 *   for an hour in a gap; hours before the first value are left out, so the list may be shorter and
 *   is empty without values
 * @throws RangeError on a time that is not a date
 */
export function hourlyMeans<Reading extends { readonly at: number }>(
  readings: readonly Reading[],
  value: (reading: Reading) => number | null,
  endAt: number,
  hours: number,
): (number | null)[] {
  within('endAt', endAt, -LAST_DATE_MS, LAST_DATE_MS);
  const known: { age: number; value: number }[] = [];
  let isSorted = true;
  for (const reading of readings) {
    const age = (endAt - within('at', reading.at, -LAST_DATE_MS, LAST_DATE_MS)) / MS_PER_HOUR;
    if (age < 0 || age > hours) continue;
    const measured = value(reading);
    if (measured === null) continue;
    isSorted &&= age < (known[known.length - 1]?.age ?? Number.POSITIVE_INFINITY);
    known.push({ age, value: measured });
  }
  // equal times in any order of the input give the same means
  if (!isSorted) known.sort((a, b) => b.age - a.age || a.value - b.value);
  const areas = { area: new Float64Array(hours), covered: new Float64Array(hours) };
  const single: (number | null)[] = Array.from({ length: hours }, () => null);
  let before: { age: number; value: number } | null = null;
  for (const here of known) {
    single[Math.min(hours - 1, Math.floor(here.age))] = here.value;
    if (before !== null && before.age > here.age && before.age - here.age <= LONGEST_GAP_HOURS) {
      addStretch(areas, before.age, before.value, here.age, here.value);
    }
    before = here;
  }
  const means = single.map((lone, age) => {
    const covered = areas.covered[age] as number;
    return covered > 0 ? (areas.area[age] as number) / covered : lone;
  });
  const oldest = means.findLastIndex((mean) => mean !== null);
  return means.slice(0, oldest + 1).reverse();
}
