/** Silence of a source that was never heard before tells nothing until it is this long, ms. */
const strangerMs = 200;
/** Nor does that of any source until it is this long. */
const shortestMs = 10;
/** A slow source that stays silent for so many of its own intervals waits for an answer. */
const intervals = 1.5;
/** A quick one, whose messages do not come so evenly, is given so many, up to `strangerMs`. */
const quickIntervals = 5;
/** An interval that was seen fades by this with each message, so that one long pause is forgotten. */
const fading = 0.75;
/** So many sources are remembered; the one heard longest ago goes first. */
const remembered = 2000;

/**
 * How often each source speaks, to tell one that waits for its answer from one that does not.
 *
 * A sensor that publishes at its own pace goes on while its message is put off; whoever waits does
 * not. All times are ms of a clock that never goes back.
 *
 * @param quietMs - a pause longer than this is no rhythm
 */
export function sourceRhythms(quietMs: number) {
  const known = new Map<string, Source>();
  const pending = new Map<string, number>();

  return {
    arrived(source: string, at: number): void {
      const one = known.get(source);
      if (!one) {
        known.set(source, { at, answeredAt: Number.NEGATIVE_INFINITY, intervalMs: 0 });
        if (known.size > remembered) known.delete(longestSilent(known));
        pending.set(source, at + strangerMs);
        return;
      }
      // What came before its last message was answered began anew with that answer.
      const sinceMs = at - Math.max(one.at, one.answeredAt);
      const faded = one.intervalMs * fading;
      // A known source that was quiet for long speaks now and then; it is not taken to wait.
      const isSlow = sinceMs >= quietMs;
      one.intervalMs = isSlow ? faded : Math.max(sinceMs, faded);
      one.at = at;
      one.answeredAt = Number.NEGATIVE_INFINITY;
      pending.set(source, isSlow ? Number.POSITIVE_INFINITY : at + patience(one.intervalMs));
    },
    /** When the first source of the group that gathers will have been silent for too long. */
    silentAt(): number {
      let earliest = Number.POSITIVE_INFINITY;
      for (const at of pending.values()) if (at < earliest) earliest = at;
      return earliest;
    },
    answered(sources: Iterable<string>, at: number): void {
      for (const source of sources) {
        const one = known.get(source);
        if (one) one.answeredAt = at;
      }
    },
    /** The group that gathered is taken. */
    taken: (): void => pending.clear(),
  };
}

interface Source {
  at: number;
  answeredAt: number;
  intervalMs: number;
}

function longestSilent(known: ReadonlyMap<string, Source>): string {
  const [first] = [...known].reduce((a, b) => (b[1].at < a[1].at ? b : a));
  return first;
}

/** @param intervalMs - between messages of a source that was heard before */
function patience(intervalMs: number): number {
  const quickMs = Math.min(strangerMs, Math.max(shortestMs, quickIntervals * intervalMs));
  return Math.max(quickMs, intervals * intervalMs);
}
