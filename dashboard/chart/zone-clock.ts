/** A moment as a wall clock of one time zone shows it. */
export interface WallTime {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Reads and sets the wall clock of one time zone. */
export interface ZoneClock {
  /** @param at - UTC epoch ms */
  read(at: number): WallTime;
  /**
   * When the clock shows a time; days and hours beyond their month and day are carried on.
   *
   * @returns UTC epoch ms; where the clock skips that time, as much later; where it shows it twice, the first
   */
  set(time: WallTime): number;
}

const MINUTE_MS = 60_000;

/** @param timeZone - IANA name; the device’s own when left out */
export function createZoneClock(timeZone?: string): ZoneClock {
  const format = new Intl.DateTimeFormat('en-GB', {
    ...(timeZone === undefined ? {} : { timeZone }),
    ...{ year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric' },
    hourCycle: 'h23',
  });

  function read(at: number): WallTime {
    const time = { year: 0, month: 0, day: 0, hour: 0, minute: 0 };
    for (const { type, value } of format.formatToParts(at)) {
      if (type in time) time[type as keyof typeof time] = Number(value);
    }
    return time;
  }

  /** How far the clock is ahead of UTC at a moment, ms. */
  function ahead(at: number): number {
    const minutes = Math.floor(at / MINUTE_MS) * MINUTE_MS;
    return asUtc(read(minutes)) - minutes;
  }

  return {
    read,
    set(time) {
      const shown = asUtc(time);
      const before = ahead(shown - 24 * 60 * MINUTE_MS);
      const after = ahead(shown + 24 * 60 * MINUTE_MS);
      // Twice shown: the earlier of both. Never shown: what the clock of before would have shown.
      const early = shown - Math.max(before, after);
      const late = shown - Math.min(before, after);
      if (asUtc(read(early)) === shown) return early;
      return asUtc(read(late)) === shown ? late : shown - before;
    },
  };
}

const asUtc = ({ year, month, day, hour, minute }: WallTime) =>
  Date.UTC(year, month - 1, day, hour, minute);
