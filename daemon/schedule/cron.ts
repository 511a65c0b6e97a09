import { schedule } from 'node-cron';

/** Every act that is repeated by the clock. */
export interface RepeatedActs {
  /** Looks at what changes while nobody sends anything: silence, and time going by. */
  everyMinute(): Promise<void>;
  /** Packs the readings of the hours that are closed. */
  pack(): Promise<void>;
  /** Puts the database’s log back into its file. */
  nightly(): Promise<void>;
  /** Copies the database where that is due; null for no backups. */
  backup: {
    /** Local time, `hh:mm`. */
    at: string;
    whenDue(isItsHour: boolean): Promise<void>;
  } | null;
  /** Sums up the morning; null where nobody wants that. */
  digest: {
    /** `hh:mm` in the time zone. */
    at: string;
    timeZone: string;
    tell(): Promise<void>;
  } | null;
  /** Told of an act that failed before the schedule was closed. */
  failed(cause: unknown): void;
  /** How fast the site’s time runs; in a fast one the minute act is done every second. */
  speed(): number;
}

export interface Schedule {
  /**
   * Begins no further act, and waits for those that write a little: the minute’s and the morning’s.
   * What may take long (packing, the night’s acts, a backup) is cut off by whoever does it; that it
   * then finds the database closed is no failure.
   */
  close(): Promise<void>;
}

export function startSchedule(acts: RepeatedActs): Schedule {
  let closed = false;
  const short = new Set<Promise<void>>();
  const guarded = (act: () => Promise<void>) => async () => {
    try {
      await act();
    } catch (cause) {
      if (!closed) acts.failed(cause);
    }
  };
  const waitedFor = (act: () => Promise<void>) => {
    const guardedAct = guarded(act);
    return async () => {
      const running = guardedAct();
      short.add(running);
      await running;
      short.delete(running);
    };
  };
  const tasks = [
    schedule(acts.speed() > 1 ? '* * * * * *' : '* * * * *', waitedFor(acts.everyMinute), {
      noOverlap: true,
    }),
    // Beside the minute’s act, so that neither waits for the other.
    schedule(acts.speed() > 1 ? '*/10 * * * * *' : '30 * * * * *', guarded(acts.pack), {
      noOverlap: true,
    }),
    schedule('15 3 * * *', guarded(acts.nightly), { noOverlap: true }),
  ];
  if (acts.backup) {
    const { at, whenDue } = acts.backup;
    const [hour, minute] = at.split(':').map(Number);
    tasks.push(
      schedule(
        `${minute} ${hour} * * *`,
        guarded(() => whenDue(true)),
        { noOverlap: true },
      ),
      schedule(
        `${minute} * * * *`,
        guarded(() => whenDue(false)),
        { noOverlap: true },
      ),
    );
  }
  if (acts.digest) {
    const { at, timeZone, tell } = acts.digest;
    const [hour, minute] = at.split(':').map(Number);
    tasks.push(
      schedule(`${minute} ${hour} * * *`, waitedFor(tell), { noOverlap: true, timezone: timeZone }),
    );
  }
  return {
    async close(): Promise<void> {
      closed = true;
      for (const task of tasks) void task.destroy();
      await Promise.all(short);
    },
  };
}
