/** A local day, and when the brush may be in hand on it. All times UTC epoch ms. */
export interface WorkDay {
  /** Local midnight. */
  startAt: number;
  /** null on a day off. */
  opensAt: number | null;
  closesAt: number | null;
}

/**
 * Fits work into working hours: it may be put down in the evening and taken up the next day.
 *
 * @param days - ascending, without gaps
 * @param fromAt - not begun before, UTC epoch ms
 * @param workMs - how long the hands are busy
 * @returns when it begins and ends; null where the calendar is too short for it
 */
export function fitWork(
  days: readonly WorkDay[],
  fromAt: number,
  workMs: number,
): { beginsAt: number; endsAt: number } | null {
  let left = workMs;
  let beginsAt: number | null = null;
  for (let i = dayIndexAt(days, fromAt); i < days.length; i++) {
    const day = days[i] as WorkDay;
    if (day.opensAt === null || day.closesAt === null) continue;
    const from = Math.max(day.opensAt, fromAt);
    if (from >= day.closesAt) continue;
    beginsAt ??= from;
    const spent = Math.min(left, day.closesAt - from);
    left -= spent;
    if (left <= 0) return { beginsAt, endsAt: from + spent };
  }
  return null;
}

/** The index of the day a moment falls on; the first day for what lies before. */
export function dayIndexAt(days: readonly WorkDay[], at: number): number {
  let low = 0;
  let high = days.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((days[middle] as WorkDay).startAt <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}
