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
  failed(cause: unknown): void;
  /** How fast the site’s time runs; in a fast one the minute act is done every second. */
  speed(): number;
}

export function startSchedule(acts: RepeatedActs): { close(): void } {
  const guarded = (act: () => Promise<void>) => async () => {
    try {
      await act();
    } catch (cause) {
      acts.failed(cause);
    }
  };
  const tasks = [
    schedule(acts.speed() > 1 ? '* * * * * *' : '* * * * *', guarded(acts.everyMinute), {
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
      schedule(`${minute} ${hour} * * *`, guarded(tell), { noOverlap: true, timezone: timeZone }),
    );
  }
  return {
    close(): void {
      for (const task of tasks) void task.destroy();
    },
  };
}
