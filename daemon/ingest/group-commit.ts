import type { IncomingReading, ReadingGroup, RefusedMessage } from '../rules/facts.ts';
import { commitPace, type PaceSettings } from './commit-pace.ts';
import { type Brought, shareOf, together } from './message-group.ts';

/** Told when a message’s part of the group is on disk, or why it is not. */
export type Acknowledge = (failure: Error | null) => void;

export interface GroupCommitParts<Committed> extends PaceSettings {
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
  /** Whether a commit failed because the disk is full: its messages are then held for a while. */
  isFull?: (cause: Error) => boolean;
  /** Told when nothing can be acknowledged because the disk is full, and when that is over. */
  fullChanged?: (isFull: boolean) => void;
  /** How long a message is held while the disk is full before its sender is let go, ms. */
  longestHoldMs?: number;
}

interface Waiting extends Brought {
  source: string;
  since: number;
  done: Acknowledge;
}

/** What became of a group. */
type Outcome<Committed> = { kind: 'done'; result: Committed } | { kind: 'failed'; cause: Error };

/** What a message may bring besides readings and refusals. */
export interface AddedMore extends Partial<Pick<Brought, 'pending' | 'opened' | 'released'>> {
  /** Who waits for the answer; all who are not named count as one. */
  from?: string | undefined;
}

const none: readonly never[] = [];
/** Source of all messages whose sender is not named. */
const unnamed = '';
/** Many nodes give up and send again after 10 s; they are let go before. From memory. */
const holdMs = 8000;
/** How soon a full disk is tried again, at first and at most: each message is tried for once. */
const firstRetryMs = 500;
const longestRetryMs = 4000;
/** Readings that are held at most while the disk is full; who brings more is let go at once. */
const mostHeld = 20_000;

/**
 * Gathers messages into groups that are committed together, and acknowledges each, in the order of
 * arrival, once its group is on disk. What arrives while a commit runs makes the next group.
 *
 * While the disk is full nothing is acknowledged. Messages are held and tried again, each time after
 * a longer pause; only those that have been held for long are let go, so that their senders come
 * back one by one and do not storm.
 */
export function groupCommit<Committed>(parts: GroupCommitParts<Committed>) {
  const { commit, committed, failed, now, isFull, fullChanged } = parts;
  const longestHoldMs = parts.longestHoldMs ?? holdMs;
  const pace = commitPace(parts);
  let waiting: Waiting[] = [];
  let size = 0;
  let running = false;
  let planned: { at: number; cancel: () => void } | null = null;
  /** Set while the disk is full: why, when it is tried next, and after what pause then. */
  let full: { cause: Error; retryAt: number; retryMs: number } | null = null;
  let idle: (() => void)[] = [];

  function plan(): void {
    if (running || waiting.length === 0) return;
    const at = performance.now();
    const waitMs = full ? Math.max(0, full.retryAt - at) : pace.wait(size, at);
    if (planned && planned.at <= at + waitMs) return;
    planned?.cancel();
    if (waitMs > 0) {
      const timer = setTimeout(runIfDue, Math.ceil(waitMs));
      planned = { at: at + waitMs, cancel: () => clearTimeout(timer) };
    } else {
      const timer = setImmediate(run);
      planned = { at, cancel: () => clearImmediate(timer) };
    }
  }

  /** What was planned may have been put off further by what arrived since. */
  function runIfDue(): void {
    planned = null;
    if (running || waiting.length === 0) return;
    if (full || pace.wait(size, performance.now()) <= 0) void run();
    else plan();
  }

  async function run(): Promise<void> {
    planned = null;
    const taken = waiting;
    waiting = [];
    size = 0;
    running = true;
    pace.begun(performance.now());
    const outcome = await outcomeOf(taken);
    running = false;
    if (outcome.kind === 'failed' && isFull?.(outcome.cause)) holdBack(taken, outcome.cause);
    else answer(taken, outcome);
    plan();
    if (!running && waiting.length === 0) {
      for (const done of idle) done();
      idle = [];
    }
  }

  function answer(taken: readonly Waiting[], outcome: Outcome<Committed>): void {
    const failure = outcome.kind === 'failed' ? outcome.cause : null;
    if (!failure && full) {
      full = null;
      fullChanged?.(false);
    }
    const sources = new Map<string, number>();
    for (const { source } of taken) sources.set(source, (sources.get(source) ?? 0) + 1);
    const at = performance.now();
    pace.done(sources, at);
    // What is due goes to the disk while this group is worked in and answered.
    if (!failure && waiting.length > 0 && pace.wait(size, at) <= 0) {
      planned?.cancel();
      void run();
    }
    if (outcome.kind === 'done') workIn(outcome.result);
    for (const { done } of taken) done(failure);
  }

  /** Puts back what could not be written for want of space; what has waited long is let go. */
  function holdBack(taken: Waiting[], cause: Error): void {
    const at = performance.now();
    const retryMs = full ? Math.min(longestRetryMs, full.retryMs * 2) : firstRetryMs;
    const isNew = full === null;
    full = { cause, retryAt: at + retryMs, retryMs };
    if (isNew) fullChanged?.(true);
    // Whoever would be held beyond the next try is let go at this one, with all it has sent: it
    // sends that again, and is not let in before the last of it was answered.
    const all = [...taken, ...waiting];
    const isOverdue = ({ since }: Waiting) => at + retryMs - since > longestHoldMs;
    const overdue = new Set(all.filter(isOverdue).map(({ source }) => source));
    const isLetGo = (one: Waiting) =>
      one.source === unnamed ? isOverdue(one) : overdue.has(one.source);
    waiting = all.filter((one) => !isLetGo(one));
    size = waiting.reduce((sum, one) => sum + shareOf(one), 0);
    for (const one of all) if (isLetGo(one)) one.done(cause);
  }

  async function outcomeOf(taken: readonly Waiting[]): Promise<Outcome<Committed>> {
    try {
      return { kind: 'done', result: await commit(together(taken, now())) };
    } catch (thrown) {
      const cause = thrown instanceof Error ? thrown : new Error(String(thrown));
      if (!full || !isFull?.(cause)) failed(cause);
      return { kind: 'failed', cause };
    }
  }

  function workIn(result: Committed): void {
    try {
      committed(result);
    } catch (cause) {
      // Refusing what is on disk would only bring it again, to the same end.
      failed(new Error(`Readings are on disk, but could not be worked in: ${cause}`, { cause }));
    }
  }

  return {
    add(
      readings: readonly IncomingReading[],
      refused: readonly RefusedMessage[],
      done: Acknowledge,
      { pending = none, from = unnamed, opened, released }: AddedMore = {},
    ) {
      const since = performance.now();
      const one = { readings, refused, pending, opened, released, source: from, since, done };
      if (full && size + shareOf(one) > mostHeld) {
        done(full.cause);
        return;
      }
      waiting.push(one);
      size += shareOf(one);
      pace.arrived(from, since);
      plan();
    },
    /** Readings, and messages without any, that wait for the next group. */
    waiting: (): number => size,
    /** Whether nothing is acknowledged just now because the disk is full. */
    isFull: (): boolean => full !== null,
    /** Settles when nothing waits and no commit runs; what a full disk holds up is let go. */
    async drained(): Promise<void> {
      if (full) {
        const { cause } = full;
        size = 0;
        for (const { done } of waiting.splice(0)) done(cause);
      }
      if (!running && waiting.length === 0) return;
      await new Promise<void>((resolve) => {
        idle.push(resolve);
      });
    },
  };
}
