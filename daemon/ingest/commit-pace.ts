import { sourceRhythms } from './source-rhythm.ts';

/** How commits are spaced. */
export interface PaceSettings {
  /** The longest that a message is put off under steady flow, ms. */
  spacingMs: number;
  /** Readings waiting at which a commit is not put off any longer. */
  groupSize: number;
}

/** Who waits for an answer speaks again within this time of it: a round trip by radio. Assumption. */
const promptMs = 60;
/**
 * How long a commit is put off to see whether anyone waits for it. So much longer than `promptMs`
 * that a source which speaks at its own pace cannot look as if it waited, however fast it speaks.
 */
const probeMs = 250;
/**
 * Silence of everyone for this long while a group is put off, and a message promptly after its
 * answer, tell of senders that come one after the other, each waiting for the one before.
 */
const silentMs = 180;
/** While commits follow each other, it is looked so soon, and then ever less often, whether that helps. */
const firstProbeMs = 1000;
const longestProbeMs = 16_000;

/**
 * Decides how long a commit is put off, so that a card is spared and nobody is slowed.
 *
 * After a quiet while nothing is put off; under steady flow messages gather. What tells a burst or a
 * replay from steady flow is that its source waits: once answered, it at once sends half as many
 * again or more, or another one comes at once where all had been silent. Then commits follow each
 * other without a pause. A source that falls silent beyond its own rhythm while its message is put
 * off waits as well. All times are ms of a clock that never goes back.
 */
export function commitPace({ spacingMs, groupSize }: PaceSettings) {
  let doneAt = Number.NEGATIVE_INFINITY;
  /** How many messages of each source the last group held, and how many came promptly since. */
  let answered: ReadonlyMap<string, number> = new Map();
  let prompt = new Map<string, number>();
  let isWaitedFor = false;
  /** The last group was waited for: one who sends in parts may be slow to send on, and still waits. */
  let lastWasWaitedFor = false;
  let running = false;
  let gathered = 0;
  /** The group that gathers began after a quiet while. */
  let afterQuiet = true;
  /** The last group was put off long enough to see whether anyone waited for it. */
  let lastWasPutOff = false;
  /** Nothing came for a while before the last group was taken, though it was put off. */
  let fellSilent = false;
  /** The last group was taken because somebody new each time seemed to wait. */
  let isRelay = false;
  let lastArrivedAt = Number.NEGATIVE_INFINITY;
  /** Messages of the last group, and how many came promptly since, whoever sent them. */
  let answeredInAll = 0;
  let promptInAll = 0;
  let probeAt = Number.NEGATIVE_INFINITY;
  let probeAgainMs = firstProbeMs;

  const rhythms = sourceRhythms(spacingMs, promptMs);

  return {
    arrived(source: string, at: number): void {
      const sinceMs = at - doneAt;
      lastArrivedAt = at;
      const isOwnPace = rhythms.arrived(source, at);
      if (gathered++ === 0) afterQuiet = !running && sinceMs >= spacingMs;
      if (sinceMs > promptMs) return;
      promptInAll++;
      if (isOwnPace) {
        // Whoever comes next is not the one that had been waiting for the answer either.
        fellSilent = false;
      } else if (fellSilent || (isRelay && promptInAll * 2 >= answeredInAll)) {
        isWaitedFor = true;
        isRelay = true;
      }
      const count = (prompt.get(source) ?? 0) + 1;
      prompt.set(source, count);
      const before = answered.get(source) ?? 0;
      if (!isOwnPace && before > 0 && count * 2 >= before) isWaitedFor = true;
    },
    /**
     * How long the next commit is still put off, ms; 0 for not at all.
     *
     * @param waiting - readings that wait, at least one
     */
    wait(waiting: number, at: number): number {
      const sinceMs = at - doneAt;
      if (waiting >= groupSize || sinceMs >= spacingMs) return 0;
      if ((isWaitedFor || lastWasWaitedFor) && at < probeAt) return 0;
      const putOffMs = isWaitedFor || !lastWasPutOff ? Math.min(probeMs, spacingMs) : spacingMs;
      return Math.max(0, Math.min(putOffMs - sinceMs, rhythms.silentAt() - at));
    },
    begun(at: number): void {
      const isSilent = at >= rhythms.silentAt();
      const wasPutOff = at - doneAt >= Math.min(probeMs, spacingMs) || isSilent;
      lastWasPutOff = !afterQuiet && wasPutOff;
      fellSilent = lastWasPutOff && at - lastArrivedAt >= silentMs;
      if (!isWaitedFor) isRelay = false;
      if (afterQuiet || !isWaitedFor) probeAgainMs = firstProbeMs;
      else if (lastWasPutOff) probeAgainMs = Math.min(longestProbeMs, probeAgainMs * 2);
      if (afterQuiet || lastWasPutOff) probeAt = at + probeAgainMs;
      lastWasWaitedFor = isWaitedFor && !lastWasPutOff;
      running = true;
      gathered = 0;
      isWaitedFor = false;
      rhythms.taken();
    },
    /** @param group - how many messages of each source were in it */
    done(group: ReadonlyMap<string, number>, at: number): void {
      doneAt = at;
      running = false;
      answered = group;
      rhythms.answered(group.keys(), at);
      answeredInAll = 0;
      for (const count of group.values()) answeredInAll += count;
      promptInAll = 0;
      prompt = new Map();
    },
  };
}
