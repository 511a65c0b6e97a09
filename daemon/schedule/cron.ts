import { schedule } from 'node-cron';

/** Every act that is repeated by the clock. */
export interface RepeatedActs {
  /** Looks at what changes while nobody sends anything: silence, and time going by. */
  everyMinute(): Promise<void>;
  /** Puts the database’s log back into its file. */
  nightly(): Promise<void>;
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
    schedule('15 3 * * *', guarded(acts.nightly), { noOverlap: true }),
  ];
  return {
    close(): void {
      for (const task of tasks) void task.destroy();
    },
  };
}
