/**
 * Readings of one sensor’s quantity as flat columns, ascending by time: as objects a flood of them takes five
 * times the memory, and the collection of garbage most of the time.
 */
export interface ReadingRun {
  readonly length: number;
  /** Epoch ms. */
  readonly at: Float64Array;
  readonly raw: Float64Array;
  readonly flags: Uint32Array;
}

interface Reading {
  at: number;
  raw: number;
  flags: number;
}

const leastRoom = 64;

/** Gathers readings that come ascending by time. */
export function runBuilder() {
  let [at, raw, flags] = roomFor(leastRoom);
  let length = 0;

  function grow(): void {
    const more = roomFor(at.length * 2);
    more[0].set(at);
    more[1].set(raw);
    more[2].set(flags);
    [at, raw, flags] = more;
  }

  return {
    get length() {
      return length;
    },
    add(atMs: number, value: number, flagBits: number): void {
      if (length === at.length) grow();
      at[length] = atMs;
      raw[length] = value;
      flags[length] = flagBits;
      length++;
    },
    run: (): ReadingRun => ({ length, at, raw, flags }),
  };
}
export type RunBuilder = ReturnType<typeof runBuilder>;

const roomFor = (count: number): [Float64Array, Float64Array, Uint32Array] => [
  new Float64Array(count),
  new Float64Array(count),
  new Uint32Array(count),
];

/** @param readings - ascending by `at` */
export function runOf(readings: readonly Reading[]): ReadingRun {
  const built = runBuilder();
  for (const { at, raw, flags } of readings) built.add(at, raw, flags);
  return built.run();
}

/** Two runs as one, its first `limit` readings; of two readings of one moment the first run’s stands. */
export function mergedRuns(kept: ReadingRun, waiting: ReadingRun, limit: number): ReadingRun {
  if (waiting.length === 0) return kept;
  if (kept.length === 0) return waiting;
  const built = runBuilder();
  const addFrom = ({ at, raw, flags }: ReadingRun, i: number) =>
    built.add(at[i] as number, raw[i] as number, flags[i] as number);
  let [i, j] = [0, 0];
  while ((i < kept.length || j < waiting.length) && built.length < limit) {
    const next = i < kept.length ? (kept.at[i] as number) : Number.POSITIVE_INFINITY;
    const other = j < waiting.length ? (waiting.at[j] as number) : Number.POSITIVE_INFINITY;
    if (next <= other) addFrom(kept, i++);
    else addFrom(waiting, j++);
    if (next === other) j++;
  }
  return built.run();
}

/** The place of the first time that is at a moment or later. */
export function placeFrom(at: ArrayLike<number>, length: number, moment: number): number {
  let [low, high] = [0, length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((at[middle] as number) < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}
