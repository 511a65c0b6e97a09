/** Messages that were taken and are not yet acknowledged, so that a farewell can wait for them. */
export function messagesUnderWay() {
  let count = 0;
  let waiting: (() => void)[] = [];
  return {
    begun(): void {
      count++;
    },
    done(): void {
      count--;
      if (count > 0) return;
      for (const done of waiting) done();
      waiting = [];
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
