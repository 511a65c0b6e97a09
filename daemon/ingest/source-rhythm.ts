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
/**
 * A message so many intervals after the one before it, at the least and most, is as its source speaks.
 * Whoever waits is put off for `intervals` of its own, and so comes two and a half of them later.
 */
const ownPace = { least: 0.5, most: 2 };
/** Shorter intervals may be those of one who waits and is answered without delay. */
const shortestPaceMs = 100;
/** Who sends so many times in a row only once answered, and then at once, waits, whatever its intervals. */
const promptInARow = 2;
/** So many sources are remembered; the one heard longest ago goes first. */
const remembered = 2000;

/**
 * How often each source speaks, to tell one that waits for its answer from one that does not.
 *
 * A sensor that publishes at its own pace goes on while its message is put off; whoever waits does
 * not. All times are ms of a clock that never goes back.
 *
 * @param quietMs - a pause longer than this is no rhythm
 * @param promptMs - who waits for an answer speaks again within this time of it
 */
export function sourceRhythms(quietMs: number, promptMs: number) {
  const known = new Map<string, Source>();
  const pending = new Map<string, number>();

  return {
    /**
     * Notes a message.
     *
     * @returns whether it came as its source speaks anyway, and so tells nothing of who waits
     */
    arrived(source: string, at: number): boolean {
      const one = known.get(source);
      if (!one) {
        known.set(source, { at, answeredAt: Number.NEGATIVE_INFINITY, intervalMs: 0, prompt: 0 });
        if (known.size > remembered) known.delete(longestSilent(known));
        pending.set(source, at + strangerMs);
        return false;
      }
      const wasMs = one.intervalMs;
      // From message to message: an answer between them changes nothing for who does not wait for it.
      const apartMs = at - one.at;
      // Intervals that were made long by our own delay look like its pace, and would go on growing.
      one.prompt = at - one.answeredAt <= promptMs ? one.prompt + 1 : 0;
      const isOwnPace =
        one.prompt < promptInARow &&
        wasMs >= shortestPaceMs &&
        apartMs >= ownPace.least * wasMs &&
        apartMs <= ownPace.most * wasMs;
      // What came before its last message was answered began anew with that answer.
      const sinceMs = isOwnPace ? apartMs : at - Math.max(one.at, one.answeredAt);
      const faded = wasMs * fading;
      // A known source that was quiet for long speaks now and then; it is not taken to wait.
      const isSlow = sinceMs >= quietMs;
      one.intervalMs = isSlow ? faded : Math.max(sinceMs, faded);
      one.at = at;
      one.answeredAt = Number.NEGATIVE_INFINITY;
      pending.set(source, isSlow ? Number.POSITIVE_INFINITY : at + patience(one.intervalMs));
      return isSlow || isOwnPace;
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
  /** So many messages in a row came promptly after the answer to the one before. */
  prompt: number;
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
