import type { Acknowledge } from './group-commit.ts';

/** Messages that were taken and are not yet acknowledged, so that a farewell can wait for them. */
export function messagesUnderWay() {
  let count = 0;
  let waiting: (() => void)[] = [];
  return {
    /** The same acknowledgement, counted until it is given. */
    counted(acknowledge: Acknowledge): Acknowledge {
      count++;
      return (failure) => {
        count--;
        acknowledge(failure);
        if (count > 0) return;
        for (const done of waiting) done();
        waiting = [];
      };
    },
    /**
     * Settles when nothing is under way, or when it has taken too long.
     *
     * @param withinMs - the longest to wait, ms
     */
    settled(withinMs: number): Promise<void> {
      if (count === 0) return Promise.resolve();
      return new Promise((resolve) => {
        const late = setTimeout(resolve, withinMs);
        waiting.push(() => {
          clearTimeout(late);
          resolve();
        });
      });
    },
  };
}
