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
  const known = new Map<string, { at: number; answeredAt: number; intervalMs: number }>();
  const pending = new Map<string, number>();

  return {
    arrived(source: string, at: number): void {
      const before = known.get(source);
      known.delete(source);
      // What came before its last message was answered began anew with that answer.
      const sinceMs = before
        ? at - Math.max(before.at, before.answeredAt)
        : Number.POSITIVE_INFINITY;
      const faded = (before?.intervalMs ?? 0) * fading;
      // A known source that was quiet for long speaks now and then; it is not taken to wait.
      const isSlow = before !== undefined && sinceMs >= quietMs;
      const intervalMs = isSlow || before === undefined ? faded : Math.max(sinceMs, faded);
      known.set(source, { at, answeredAt: Number.NEGATIVE_INFINITY, intervalMs });
      if (known.size > remembered) {
        for (const oldest of known.keys()) {
          known.delete(oldest);
          break;
        }
      }
      const patienceMs = isSlow ? Number.POSITIVE_INFINITY : patience(before ? intervalMs : null);
      pending.set(source, at + patienceMs);
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

/** @param intervalMs - of the source; null when it was never heard before */
function patience(intervalMs: number | null): number {
  if (intervalMs === null) return strangerMs;
  const quickMs = Math.min(strangerMs, Math.max(shortestMs, quickIntervals * intervalMs));
  return Math.max(quickMs, intervals * intervalMs);
}
