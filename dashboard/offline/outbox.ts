import { type ReadonlySignal, signal } from '@preact/signals';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Outcome } from '../api.ts';
import {
  answerOf,
  byShedClock,
  type Entry,
  type EntryGiven,
  type EntryStore,
  inOrder,
  type NewEntry,
  needsSomebody,
  nextToSend,
} from './entry.ts';

/** What became of an entry, as far as it is known when its form wants to close. */
export type Became =
  | { readonly kind: 'sent'; readonly reply: unknown }
  /** Kept on this device; sent as soon as it goes. */
  | { readonly kind: 'waits' }
  | { readonly kind: 'refused'; readonly problem: Problem }
  | { readonly kind: 'taken-back' }
  /** This device keeps nothing and the daemon did not take it: the form must stay. */
  | { readonly kind: 'not-kept'; readonly problem: Problem };

export interface Ticket {
  readonly id: string;
  readonly became: Promise<Became>;
}

/** What was entered and not yet taken by the daemon. */
export interface Outbox {
  /** In the order in which they are sent. */
  readonly entries: ReadonlySignal<readonly Entry[]>;
  /** False once something could not be kept here. */
  readonly keeps: ReadonlySignal<boolean>;
  /** Why nothing is sent although the daemon answers; null when nothing stands against it. */
  readonly stoppedBy: ReadonlySignal<Problem | null>;
  /** Keeps it first, then sends it; with `holdMs` after so long, until when it can be taken back. */
  record(entry: NewEntry, holdMs?: number): Promise<Ticket>;
  /** Takes back what was not sent yet. @returns false when it is too late for that */
  takeBack(id: string): Promise<boolean>;
  /** Puts a corrected body in the place of what was refused, and sends it. */
  correct(id: string, body: EntryGiven['body']): Promise<void>;
  /** Sends what waits. @param asked - whether a person wants it, also after the PIN was not given */
  flush(asked?: boolean): Promise<void>;
  /** Sends at once what is held to be taken back: the page is about to be left. */
  hurry(): Promise<void>;
  /** Reads what an earlier page left here. */
  open(): Promise<void>;
}

export interface OutboxPorts {
  readonly store: EntryStore;
  readonly send: (entry: Entry) => Promise<Outcome<unknown>>;
  /** The shed’s clock and whether it is known, and this device’s, UTC epoch ms. */
  readonly clock: () => { shedNow: number; known: boolean; deviceNow: number };
  /** Calls back after so many ms. */
  readonly after: (ms: number, act: () => void) => void;
}

/** Where nothing can be kept; the page says it in the reader’s words. */
const notKept: Problem = {
  type: 'about:blank',
  title: '',
  status: 0,
  detail: '',
  code: 'NOT_KEPT',
  doThis: '',
};

/** Keeps what people enter until the daemon has taken it, each once and in order. */
export function createOutbox({ store, send, clock, after }: OutboxPorts): Outbox {
  const entries = signal<readonly Entry[]>([]);
  const keeps = signal(true);
  const stoppedBy = signal<Problem | null>(null);
  const waiting = new Map<string, (became: Became) => void>();
  /** Taken back while a round was reading them. */
  const gone = new Set<string>();
  let sending: string | null = null;
  let round: Promise<void> | null = null;
  let again = false;
  let lastOrder = 0;

  async function read(): Promise<readonly Entry[]> {
    const found = inOrder(await store.all()).filter(({ id }) => !gone.has(id));
    lastOrder = Math.max(lastOrder, found.at(-1)?.order ?? 0);
    entries.value = found;
    return found;
  }

  function tell(id: string, became: Became): void {
    waiting.get(id)?.(became);
    waiting.delete(id);
  }

  function flush(asked = false): Promise<void> {
    if (asked) stoppedBy.value = null;
    // Without somebody there it is not asked for the PIN a second time.
    if (stoppedBy.value !== null && needsSomebody(stoppedBy.value)) return Promise.resolve();
    again = true;
    round ??= rounds();
    return round;
  }

  async function rounds(): Promise<void> {
    while (again) {
      again = false;
      await sendAll();
    }
    // Before anything else can run: who asks from now on begins a round of his own.
    round = null;
    // Whoever waits behind another one is kept as well; who is still held is not told yet.
    for (const { id, notBefore } of entries.value) {
      if (notBefore <= clock().deviceNow) tell(id, { kind: 'waits' });
    }
  }

  async function sendAll(): Promise<void> {
    const passedOver = new Set<string>();
    try {
      for (;;) {
        const all = await read();
        const next = nextToSend(all, clock().deviceNow, passedOver);
        if (next === null) break;
        const { shedNow, known, deviceNow } = clock();
        const entry = known ? byShedClock(next, shedNow - deviceNow) : next;
        sending = entry.id;
        const outcome = await send(entry);
        const answer = answerOf(outcome);
        if (outcome.kind === 'done') {
          await store.remove(entry.id);
          stoppedBy.value = null;
          tell(entry.id, { kind: 'sent', reply: outcome.reply });
        } else if (answer === 'refused') {
          await store.put({ ...entry, refused: outcome.problem });
          tell(entry.id, { kind: 'refused', problem: outcome.problem });
        } else {
          if (answer === 'stop') {
            stoppedBy.value = outcome.problem;
            break;
          }
          passedOver.add(entry.id);
        }
        sending = null;
      }
    } catch {
      keeps.value = false;
    } finally {
      sending = null;
      await read().catch(() => {});
    }
  }

  async function sendUnkept(entry: Entry): Promise<Became> {
    keeps.value = false;
    const outcome = await send(entry);
    if (outcome.kind === 'done') return { kind: 'sent', reply: outcome.reply };
    return answerOf(outcome) === 'refused'
      ? { kind: 'refused', problem: outcome.problem }
      : { kind: 'not-kept', problem: notKept };
  }

  /** Ends the hold of an entry, or of all: they can be sent now. */
  async function release(only?: string): Promise<void> {
    const held = entries.value.filter(
      ({ id, notBefore }) => notBefore > 0 && (only === undefined || id === only),
    );
    for (const entry of held) {
      if (!gone.has(entry.id)) await store.put({ ...entry, notBefore: 0 });
    }
  }

  return {
    entries,
    keeps,
    stoppedBy,
    async record(given, holdMs = 0) {
      const { shedNow, known, deviceNow } = clock();
      gone.delete(given.id);
      const entry: Entry = {
        ...given,
        given: given.given as EntryGiven,
        order: ++lastOrder,
        enteredAt: shedNow,
        clockKnown: known,
        notBefore: holdMs === 0 ? 0 : deviceNow + holdMs,
        refused: null,
      };
      try {
        // Whoever goes on has no more to take back.
        await release();
        await store.put(entry);
        entries.value = inOrder([...entries.value.filter(({ id }) => id !== entry.id), entry]);
      } catch {
        return { id: entry.id, became: sendUnkept(entry) };
      }
      keeps.value = true;
      const became = new Promise<Became>((resolve) => waiting.set(entry.id, resolve));
      // By a timer and not by the clock alone, which somebody may set back meanwhile.
      if (holdMs > 0) after(holdMs, () => void release(entry.id).then(() => flush(true)));
      else void flush(true);
      return { id: entry.id, became };
    },
    async takeBack(id) {
      if (sending === id || !entries.value.some((entry) => entry.id === id)) return false;
      gone.add(id);
      entries.value = entries.value.filter((entry) => entry.id !== id);
      try {
        await store.remove(id);
      } catch {
        // It would be sent after all, by the next page that is opened.
        gone.delete(id);
        return false;
      }
      tell(id, { kind: 'taken-back' });
      void flush();
      return true;
    },
    async correct(id, body) {
      const entry = entries.value.find((one) => one.id === id);
      if (entry === undefined) return;
      await store.put({ ...entry, given: { ...entry.given, body }, refused: null });
      await flush(true);
    },
    flush,
    async hurry() {
      await release();
      await flush();
    },
    async open() {
      try {
        await read();
        await release();
        await flush(true);
      } catch {
        keeps.value = false;
      }
    },
  };
}
