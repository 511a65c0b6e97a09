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

/** What a place last heard of each sensor, and what that comes to. */
export interface Held {
  readonly last: Map<number, HeardReading>;
  /** How far away the nearest sensors are that have a standing reading; infinite where none has. */
  level: number;
  /** The lowest or highest of what these last said. */
  value: number;
  /** Until then every reading stands, epoch ms. */
  standsUntil: number;
}

export const nothingHeard = (): Held => ({
  last: new Map(),
  level: Number.POSITIVE_INFINITY,
  value: Number.NaN,
  standsUntil: Number.POSITIVE_INFINITY,
});

/**
 * Takes in what arrived at one moment and says what the place’s value is then.
 *
 * A sensor’s reading stands until its next one, at most `holdMs`, and not past its leaving. The
 * nearest sensors with a standing reading speak; enclosing places are heard only when the place’s
 * own sensors are silent. The value depends on nothing later, so a series can be carried on reading
 * by reading and is the same when made again from the start. All sensors are looked at only where the
 * one that spoke falls silent or takes back what it said: a hundred of them cost little more than one.
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
  let isOpen = false;
  for (const reading of moment) {
    const before = held.last.get(reading.sensorKey);
    held.last.set(reading.sensorKey, reading);
    held.standsUntil = Math.min(held.standsUntil, endOf(reading, holdMs));
    if (speaksOver(reading, held, speaker)) speak(held, reading);
    else if (before?.level === held.level && before.value === held.value) isOpen = true;
  }
  if (isOpen || at >= held.standsUntil) lookThrough(held, at, holdMs, speaker);
  return moment.some((reading) => reading.level === held.level) ? { at, value: held.value } : null;
}

const endOf = ({ at, untilAt }: HeardReading, holdMs: number) =>
  untilAt === null ? at + holdMs : Math.min(at + holdMs, untilAt);

/** Whether a reading is nearer than what speaks, or as near and at least as low or high. */
function speaksOver(reading: HeardReading, { level, value }: Held, speaker: Speaker): boolean {
  if (reading.level !== level) return reading.level < level;
  return speaker === 'lowest' ? reading.value <= value : reading.value >= value;
}

function speak(held: Held, { level, value }: HeardReading): void {
  held.level = level;
  held.value = value;
}

/** Drops what stands no longer, and finds anew who speaks. */
function lookThrough(held: Held, at: number, holdMs: number, speaker: Speaker): void {
  held.level = Number.POSITIVE_INFINITY;
  held.standsUntil = Number.POSITIVE_INFINITY;
  for (const [sensorKey, reading] of held.last) {
    if (at - reading.at > holdMs || (reading.untilAt !== null && reading.untilAt <= at)) {
      held.last.delete(sensorKey);
      continue;
    }
    held.standsUntil = Math.min(held.standsUntil, endOf(reading, holdMs));
    if (speaksOver(reading, held, speaker)) speak(held, reading);
  }
}

/**
 * How far apart the sensors are that speak for a place.
 *
 * @returns in the unit of the quantity, 0 or more; null when fewer than two speak
 */
export function apartNow({ last, level }: Held): number | null {
  const values = [...last.values()]
    .filter((reading) => reading.level === level)
    .map((reading) => reading.value);
  return values.length < 2 ? null : Math.max(...values) - Math.min(...values);
}

/**
 * The sample series of a place, from all that its sensors said.
 *
 * @param heard - readings by their moments, ascending
 * @param held - what was heard before; changed in place
 * @returns samples ascending by time, one a moment
 */
export function* placeSeries(
  heard: Iterable<readonly HeardReading[]>,
  holdMs: number,
  speaker: Speaker,
  held: Held = nothingHeard(),
): Generator<Sample> {
  for (const moment of heard) {
    const sample = hear(held, moment, holdMs, speaker);
    if (sample) yield sample;
  }
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
