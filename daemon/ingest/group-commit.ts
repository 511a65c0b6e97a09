import type { IncomingReading, ReadingGroup, RefusedMessage } from '../rules/facts.ts';

/** Told when a message’s part of the group is on disk, or why it is not. */
export type Acknowledge = (failure: Error | null) => void;

export interface GroupCommitParts<Committed> {
  /** Settles once the group is on disk. */
  commit: (group: ReadingGroup) => Promise<Committed>;
  /** Told of each commit before the messages in it are acknowledged. */
  committed: (result: Committed) => void;
  /**
   * Told of a commit that failed; its messages are refused and will come again. Also told when
   * `committed` threw; its messages are on disk and acknowledged.
   */
  failed: (cause: Error) => void;
  now: () => number;
  spacingMs: number;
  groupSize: number;
}

/**
 * Gathers messages into groups that are committed together, and acknowledges each, in the order of
 * arrival, once its group is on disk.
 *
 * A message after a quiet while is committed at once. Under steady flow commits are spaced, unless
 * a full group waits; what arrives while a commit runs makes the next group.
 */
export function groupCommit<Committed>(parts: GroupCommitParts<Committed>) {
  const { commit, committed, failed, now, spacingMs, groupSize } = parts;
  let group: ReadingGroup = { readings: [], refused: [], arrivedAt: 0 };
  let waiting: Acknowledge[] = [];
  let running = false;
  let lastDoneMs = Number.NEGATIVE_INFINITY;
  let planned: { at: 'once' | 'later'; cancel: () => void } | null = null;
  let idle: (() => void)[] = [];

  function plan(): void {
    if (running || waiting.length === 0) return;
    const full = group.readings.length + group.refused.length >= groupSize;
    if (planned?.at === 'once' || (planned && !full)) return;
    planned?.cancel();
    const waitMs = full ? 0 : lastDoneMs + spacingMs - performance.now();
    if (waitMs > 0) {
      const timer = setTimeout(run, waitMs);
      planned = { at: 'later', cancel: () => clearTimeout(timer) };
    } else {
      const timer = setImmediate(run);
      planned = { at: 'once', cancel: () => clearImmediate(timer) };
    }
  }

  async function run(): Promise<void> {
    planned = null;
    const taken = { ...group, arrivedAt: now() };
    const acknowledges = waiting;
    group = { readings: [], refused: [], arrivedAt: 0 };
    waiting = [];
    running = true;
    const failure = await commitFailure(taken);
    running = false;
    lastDoneMs = performance.now();
    for (const acknowledge of acknowledges) acknowledge(failure);
    plan();
    if (!running && waiting.length === 0) {
      for (const done of idle) done();
      idle = [];
    }
  }

  /** Commits a group; null when it is on disk, whatever became of it afterwards. */
  async function commitFailure(taken: ReadingGroup): Promise<Error | null> {
    let result: Committed;
    try {
      result = await commit(taken);
    } catch (cause) {
      const failure = cause instanceof Error ? cause : new Error(String(cause));
      failed(failure);
      return failure;
    }
    try {
      committed(result);
    } catch (cause) {
      // Refusing what is on disk would only bring it again, to the same end.
      failed(new Error(`Readings are on disk, but could not be worked in: ${cause}`, { cause }));
    }
    return null;
  }

  return {
    add(
      readings: readonly IncomingReading[],
      refused: readonly RefusedMessage[],
      done: Acknowledge,
    ) {
      group.readings.push(...readings);
      group.refused.push(...refused);
      waiting.push(done);
      plan();
    },
    /** Settles when nothing waits and no commit runs. */
    drained: (): Promise<void> =>
      running || waiting.length > 0
        ? new Promise((resolve) => {
            idle.push(resolve);
          })
        : Promise.resolve(),
  };
}
