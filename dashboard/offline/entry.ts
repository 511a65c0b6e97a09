import type { Problem } from '../../daemon/contract/problem.ts';
import type { Given, Outcome } from '../api.ts';

/**
 * What may be entered without a network. Each of them can be sent twice without being recorded
 * twice: by its client-made id, or because it sets something to what it is already.
 */
export const recordable = [
  'createTest',
  'createCoat',
  'createRemark',
  'createPhoto',
  'createMove',
  'createReading',
  'splitBatch',
  'mergeBatch',
  'changeBatch',
  'tickMounting',
  'beginCoating',
  'tickCoating',
  'endCoating',
] as const;
export type Recordable = (typeof recordable)[number];

/** What a person entered, whole enough to be sent some other day. */
export interface Entry {
  /** UUID v7, made here; where the fact itself has an id, it is this one. */
  readonly id: string;
  /** Sent by this, ascending. */
  readonly order: number;
  readonly name: Recordable;
  /** As the route wants it: params and body. */
  readonly given: EntryGiven;
  /** When it was entered, by the shed’s clock, UTC epoch ms. */
  readonly enteredAt: number;
  /** Whether the shed’s clock was known then; else `enteredAt` is this device’s own clock. */
  readonly clockKnown: boolean;
  /** The batches that it is about: what is about one batch keeps its order. */
  readonly batchIds: readonly string[];
  /** How the batch was called then, to be listed. */
  readonly batchName: string;
  /** Not sent before this moment of this device’s clock, ms: until then it can be taken back. */
  readonly notBefore: number;
  /** What the daemon found wrong with it; null while it waits. */
  readonly refused: Problem | null;
}

export interface EntryGiven {
  readonly params?: Readonly<Record<string, string>>;
  readonly body: Readonly<Record<string, unknown>>;
}

/** What a form hands over; times, order and state are added. */
export interface NewEntry<N extends Recordable = Recordable> {
  readonly id: string;
  readonly name: N;
  readonly given: Given<N>;
  readonly batchIds: readonly string[];
  readonly batchName: string;
}

/** Keeps entries over a reload and a restart. */
export interface EntryStore {
  /** Rejects where nothing can be kept here. */
  all(): Promise<readonly Entry[]>;
  put(entry: Entry): Promise<void>;
  remove(id: string): Promise<void>;
}

/** Entries in the order in which they are sent. */
export function inOrder(entries: readonly Entry[]): Entry[] {
  return [...entries].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));
}

/**
 * The next entry that may be sent: the first that waits, and that nothing before it about the same
 * batch holds up. A test must not arrive before the coat that was felt.
 *
 * @param entries - in order
 * @param deviceNow - this device’s clock, ms
 * @param passedOver - ids that could not be sent in this round
 */
export function nextToSend(
  entries: readonly Entry[],
  deviceNow: number,
  passedOver: ReadonlySet<string>,
): Entry | null {
  const heldUp = new Set<string>();
  for (const entry of entries) {
    const isFree = !entry.batchIds.some((id) => heldUp.has(id));
    const isReady =
      entry.refused === null && entry.notBefore <= deviceNow && !passedOver.has(entry.id);
    if (isFree && isReady) return entry;
    for (const id of entry.batchIds) heldUp.add(id);
  }
  return null;
}

/** What an answer means for the entry that was sent. */
export type Answer = 'taken' | 'refused' | 'later' | 'stop';

/** Refusals that are about this device and not about what it sent. */
const aboutDevice: readonly string[] = [
  'BC_LOGIN_NEEDED',
  'BC_ROLE_TOO_SMALL',
  'BC_WRITE_NOT_ALLOWED',
  'BC_REQUEST_FOREIGN',
  'BC_HOST_UNKNOWN',
  'BC_TOO_MANY_REQUESTS',
  'BC_STORE_FULL',
];

/** Whether somebody must do something about it, so that trying again by itself is no use. */
export function needsSomebody({ code }: Problem): boolean {
  return /^BC_(LOGIN_NEEDED|ROLE_TOO_SMALL|WRITE_NOT_ALLOWED)$/.test(code);
}

/**
 * `later`: the daemon stumbled over this one, others may pass. `stop`: nothing can be sent now. Only
 * the daemon itself refuses: what another machine on the way answers says nothing about an entry.
 */
export function answerOf(outcome: Outcome<unknown>): Answer {
  if (outcome.kind === 'done') return 'taken';
  const { code, status } = outcome.problem;
  if (!code.startsWith('BC_') || aboutDevice.includes(code)) return 'stop';
  return status >= 500 ? 'later' : 'refused';
}

/** The fields that say when something happened. */
export const momentKeys = ['at', 'finishedAt', 'begunAt'] as const;

/**
 * The same entry once the shed’s clock is known: what was entered by a device’s own clock is put to
 * the time that the shed’s clock showed then.
 *
 * @param shedAheadMs - the shed’s clock less this device’s, ms
 */
export function byShedClock(entry: Entry, shedAheadMs: number): Entry {
  if (entry.clockKnown) return entry;
  const body: Record<string, unknown> = { ...entry.given.body };
  for (const key of momentKeys) {
    const said = body[key];
    // A time that somebody typed is a time on the wall, not one of this device’s clock.
    if (typeof said === 'string' && Date.parse(said) === entry.enteredAt) {
      body[key] = new Date(entry.enteredAt + shedAheadMs).toISOString();
    }
  }
  return {
    ...entry,
    given: { ...entry.given, body },
    enteredAt: entry.enteredAt + shedAheadMs,
    clockKnown: true,
  };
}
