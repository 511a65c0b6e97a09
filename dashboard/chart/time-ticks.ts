import type { Range } from './range.ts';
import type { WallTime, ZoneClock } from './zone-clock.ts';

/** A mark of the time axis: the clock within a day, the date where one begins. */
export interface TimeTick {
  /** UTC epoch seconds. */
  readonly at: number;
  readonly kind: 'clock' | 'date';
}

interface Step {
  readonly of: 'minute' | 'hour' | 'day' | 'month';
  readonly by: number;
  /** About how long it is, s. */
  readonly lengthS: number;
}

const step = (of: Step['of'], by: number, unitS: number): Step => ({ of, by, lengthS: by * unitS });
const steps: readonly Step[] = [
  ...[1, 2, 5, 10, 15, 30].map((by) => step('minute', by, 60)),
  ...[1, 2, 3, 6, 12].map((by) => step('hour', by, 3_600)),
  ...[1, 2, 3, 4, 7, 14].map((by) => step('day', by, 86_400)),
  ...[1, 2, 3, 6, 12, 24, 60, 120].map((by) => step('month', by, 30.4 * 86_400)),
];
const LONGEST: Step = step('month', 120, 30.4 * 86_400);

/**
 * Marks at round times of the reader’s own clock, which a change to summer time neither shifts nor
 * doubles.
 *
 * @param most - about how many have room
 */
export function timeTicks(range: Range, most: number, clock: ZoneClock): TimeTick[] {
  const wanted = (range.to - range.from) / Math.max(1, most);
  const chosen = steps.find(({ lengthS }) => lengthS >= wanted) ?? LONGEST;
  const ticks: TimeTick[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const time of roundTimes(range, chosen, clock)) {
    const at = clock.set(time) / 1000;
    if (at > range.to) break;
    if (at < range.from || at <= last) continue;
    // In the hour that the clock skips stands no mark.
    const shown = clock.read(at * 1000);
    if (chosen.of === 'hour' && shown.hour !== time.hour % 24) continue;
    ticks.push({ at, kind: shown.hour === 0 && shown.minute === 0 ? 'date' : 'clock' });
    last = at;
  }
  return ticks;
}

function* roundTimes(range: Range, { of, by }: Step, clock: ZoneClock): Generator<WallTime> {
  const { year, month, day } = clock.read(range.from * 1000);
  const midnight = { year, month, day, hour: 0, minute: 0 };
  const most = 2_000;
  if (of === 'month') {
    // Counted from the year 0 on, so that the same months are marked while one moves along.
    const months = year * 12 + month - 1;
    const first = month - (months % by);
    for (let i = 0; i < most; i++) yield { ...midnight, month: first + i * by, day: 1 };
  } else if (of === 'day') {
    // Counted through from one day on, so that the same days are marked while one moves along.
    const number = Math.floor(Date.UTC(year, month - 1, day) / 86_400_000);
    const back = by === 7 || by === 14 ? (number + 3) % by : number % by;
    for (let i = 0; i < most; i++) yield { ...midnight, day: day - back + i * by };
  } else {
    const perDay = of === 'hour' ? 24 / by : 1_440 / by;
    for (let days = 0; days < most; days++) {
      for (let i = 0; i < perDay; i++) {
        const minutes = i * by * (of === 'hour' ? 60 : 1);
        yield {
          ...midnight,
          day: day + days,
          hour: Math.floor(minutes / 60),
          minute: minutes % 60,
        };
      }
    }
  }
}
