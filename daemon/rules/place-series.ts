/** One reading that a place hears. */
export interface HeardReading {
  sensorKey: number;
  at: number;
  value: number;
  /** How far away the sensor sits: 0 at the place itself, 1 at what encloses it, and so on. */
  level: number;
  /** When the sensor leaves, exclusive; null while it stays. */
  untilAt: number | null;
}

export interface Sample {
  at: number;
  value: number;
}

/** Which of several sensors speaks: the coldest counts for cure, the dampest for dew. */
export type Speaker = 'lowest' | 'highest';

/** What a place last heard of each sensor. */
export type Held = Map<number, HeardReading>;

/**
 * Takes in what arrived at one moment and says what the place’s value is then.
 *
 * A sensor’s reading stands until its next one, at most `holdMs`, and not past its leaving. The
 * nearest sensors with a standing reading speak; enclosing places are heard only when the place’s
 * own sensors are silent. The value depends on nothing later, so a series can be carried on reading
 * by reading and is the same when made again from the start.
 *
 * @param held - what was heard before; changed in place
 * @param moment - the readings of one and the same time, at least one
 * @returns the sample, or null when nearer sensors speak
 */
export function hear(
  held: Held,
  moment: readonly HeardReading[],
  holdMs: number,
  speaker: Speaker,
): Sample | null {
  const at = moment[0]?.at;
  if (at === undefined) return null;
  for (const reading of moment) held.set(reading.sensorKey, reading);
  let level = Number.POSITIVE_INFINITY;
  let value = 0;
  for (const [sensorKey, reading] of held) {
    if (at - reading.at > holdMs || (reading.untilAt !== null && reading.untilAt <= at)) {
      held.delete(sensorKey);
      continue;
    }
    if (reading.level > level) continue;
    const speaks =
      reading.level < level ||
      (speaker === 'lowest' ? reading.value < value : reading.value > value);
    if (!speaks) continue;
    level = reading.level;
    value = reading.value;
  }
  return moment.some((reading) => reading.level === level) ? { at, value } : null;
}

/**
 * How far apart the sensors are that speak for a place.
 *
 * @returns in the unit of the quantity, 0 or more; null when fewer than two speak
 */
export function apartNow(held: Held): number | null {
  const level = Math.min(...[...held.values()].map((reading) => reading.level));
  const values = [...held.values()]
    .filter((reading) => reading.level === level)
    .map((reading) => reading.value);
  return values.length < 2 ? null : Math.max(...values) - Math.min(...values);
}

/**
 * The sample series of a place, from all that its sensors said.
 *
 * @param readings - in any order
 * @returns samples ascending by time, one a moment
 */
export function placeSeries(
  readings: readonly HeardReading[],
  holdMs: number,
  speaker: Speaker,
): { samples: Sample[]; held: Held } {
  const held: Held = new Map();
  const samples: Sample[] = [];
  for (const moment of moments(readings)) {
    const sample = hear(held, moment, holdMs, speaker);
    if (sample) samples.push(sample);
  }
  return { samples, held };
}

/** Readings gathered by their time, ascending; those of one time in the order of their sensors. */
export function moments(readings: readonly HeardReading[]): HeardReading[][] {
  const ordered = [...readings].sort((a, b) => a.at - b.at || a.sensorKey - b.sensorKey);
  const groups: HeardReading[][] = [];
  for (const reading of ordered) {
    const group = groups.at(-1);
    if (group && group[0]?.at === reading.at) group.push(reading);
    else groups.push([reading]);
  }
  return groups;
}
