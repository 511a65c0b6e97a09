import type { ProblemCode } from '../contract/problem.ts';
import type { Said } from '../contract/sentence.ts';
import type { ReadingGroup } from '../rules/facts.ts';
import type { PostingPlan } from '../rules/outgoing.ts';
import type { Committed } from './commit-readings.ts';
import {
  factColumns,
  fromFactColumns,
  fromNamedColumns,
  type NamedColumns,
  namedColumns,
  type ReadingColumns,
} from './reading-columns.ts';
import type { StoreWriter } from './store.ts';

/** What the main thread asks of the store's thread, and what comes back, in the same order. */
export type ThreadRequest =
  | { id: number; verb: Exclude<keyof StoreWriter, GroupVerb>; args: unknown[] }
  | { id: number; verb: GroupVerb; group: PackedGroup; args: unknown[] };

/** The verbs that bring a group of readings first, and tell what became of it. */
type GroupVerb = 'commitReadings' | 'placePending';

/** A group with its readings as columns. */
type PackedGroup = Omit<ReadingGroup, 'readings'> & { readings: NamedColumns };

export type ThreadReply =
  | { id: number; kind: 'done'; result: unknown }
  | {
      id: number;
      kind: 'committed';
      result: Omit<Committed, 'fresh'>;
      fresh: ReadingColumns;
    }
  | {
      id: number;
      kind: 'refused';
      code: ProblemCode;
      detail: string | Said;
      pointer: string | null;
    }
  | { id: number; kind: 'full'; message: string }
  | { id: number; kind: 'failed'; message: string; stack: string | undefined };

export interface ThreadStart {
  file: string;
  timeUnknownBit: number;
  /** Sensors beyond this number are refused. */
  maxSensors?: number;
  /** Who is told of a notice; nobody when left out. */
  posting?: PostingPlan;
}

/** What is asked of the thread, as it goes there. */
export function threadRequest(
  id: number,
  verb: keyof StoreWriter,
  args: readonly unknown[],
): ThreadRequest {
  if (verb !== 'commitReadings' && verb !== 'placePending') return { id, verb, args: [...args] };
  const [group, ...more] = args as [ReadingGroup, ...unknown[]];
  const packed = { ...group, readings: namedColumns(group.readings) };
  return { id, verb, group: packed, args: more };
}

/** Does what was asked, and says what came of it. */
export function doneReply(request: ThreadRequest, writer: StoreWriter): ThreadReply {
  const { id, verb } = request;
  const act = writer[verb] as (...args: unknown[]) => unknown;
  if (!('group' in request)) return { id, kind: 'done', result: act(...request.args) };
  const group = { ...request.group, readings: fromNamedColumns(request.group.readings) };
  const { fresh, ...result } = act(group, ...request.args) as Committed;
  return { id, kind: 'committed', result, fresh: factColumns(fresh) };
}

/** What the thread has done, as the one who asked gets it. */
export function resultOf(reply: Extract<ThreadReply, { result: unknown }>): unknown {
  if (reply.kind === 'done') return reply.result;
  return { ...reply.result, fresh: fromFactColumns(reply.fresh) } satisfies Committed;
}
