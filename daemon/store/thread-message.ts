import type { ProblemCode } from '../contract/problem.ts';
import type { StoreWriter } from './store.ts';

/** What the main thread asks of the store's thread, and what comes back, in the same order. */
export interface ThreadRequest {
  id: number;
  verb: keyof StoreWriter;
  args: unknown[];
}

export type ThreadReply =
  | { id: number; kind: 'done'; result: unknown }
  | { id: number; kind: 'refused'; code: ProblemCode; detail: string; pointer: string | null }
  | { id: number; kind: 'full'; message: string }
  | { id: number; kind: 'failed'; message: string; stack: string | undefined };

export interface ThreadStart {
  file: string;
  timeUnknownBit: number;
  /** Sensors beyond this number are refused. */
  maxSensors?: number;
}
