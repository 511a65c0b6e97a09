/** A reading as an independent reckoner sees it. */
export interface PlainReading {
  sensor: string;
  at: number;
  value: number;
}

/** Where a sensor sits, from when; the level is 0 at the place itself and 1 in the room about it. */
export interface PlainStay {
  sensor: string;
  level: number | null;
  fromAt: number;
}

/** A stretch in which nothing a sensor says counts; `untilAt` exclusive. */
export interface PlainDoubt {
  sensor: string;
  fromAt: number;
  untilAt: number;
}

const hour = 3_600_000;

/**
 * Degree-hours over a stretch, reckoned the slow and plain way: at each moment look at every sensor’s
 * newest reading, take the nearest level, take the coldest; then add up lines above the datum.
 */
export function plainDegreeHours(
  readings: readonly PlainReading[],
  stays: readonly PlainStay[],
  fromAt: number,
  toAt: number,
  { datumC, maxGapHours }: { datumC: number; maxGapHours: number },
  doubts: readonly PlainDoubt[] = [],
): { low: number; high: number; coveredHours: number } {
  const levelAt = (sensor: string, at: number): number | null => {
    const past = stays.filter((stay) => stay.sensor === sensor && stay.fromAt <= at);
    return past.sort((a, b) => a.fromAt - b.fromAt).at(-1)?.level ?? null;
  };
  const firsts = new Map<string, PlainReading>();
  for (const reading of readings) {
    const key = `${reading.sensor} ${reading.at}`;
    if (!firsts.has(key)) firsts.set(key, reading);
  }
  const doubted = (sensor: string, at: number) =>
    doubts.some((one) => one.sensor === sensor && one.fromAt <= at && at < one.untilAt);
  const known = [...firsts.values()].filter(
    (one) => levelAt(one.sensor, one.at) !== null && !doubted(one.sensor, one.at),
  );
  const times = [...new Set(known.map((one) => one.at))].sort((a, b) => a - b);
  const line: { at: number; value: number }[] = [];
  for (const at of times) {
    let best = { level: Number.POSITIVE_INFINITY, value: Number.NaN, now: false };
    for (const sensor of new Set(known.map((one) => one.sensor))) {
      const newest = known
        .filter((one) => one.sensor === sensor && one.at <= at)
        .sort((a, b) => a.at - b.at)
        .at(-1);
      if (!newest || at - newest.at > maxGapHours * hour) continue;
      // A reading speaks from where its sensor sat then, until the sensor goes elsewhere.
      // Nor does it while the sensor is not believed, whatever it said before.
      const moved = [...stays, ...doubts.filter((one) => one.untilAt > one.fromAt)].some(
        (one) => one.sensor === sensor && one.fromAt > newest.at && one.fromAt <= at,
      );
      const level = levelAt(sensor, newest.at);
      if (moved || level === null) continue;
      if (level < best.level) best = { level, value: newest.value, now: newest.at === at };
      else if (level === best.level) {
        best.value = Math.min(best.value, newest.value);
        best.now ||= newest.at === at;
      }
    }
    if (best.now) line.push({ at, value: best.value });
  }
  let low = 0;
  let high = 0;
  let coveredHours = 0;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1];
    const b = line[i];
    if (!a || !b) continue;
    const start = Math.max(a.at, fromAt);
    const end = Math.min(b.at, toAt);
    if (end <= start) continue;
    const on = (at: number) => a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at);
    const gained = areaAbove(on(start) - datumC, on(end) - datumC) * ((end - start) / hour);
    high += gained;
    if (b.at - a.at > maxGapHours * hour) continue;
    low += gained;
    coveredHours += (end - start) / hour;
  }
  return { low, high, coveredHours };
}

function areaAbove(from: number, to: number): number {
  if (from >= 0 && to >= 0) return (from + to) / 2;
  if (from < 0 && to < 0) return 0;
  const top = Math.max(from, to);
  return ((top / Math.abs(to - from)) * top) / 2;
}
