import type { Acknowledge } from './group-commit.ts';
import type { Arrived } from './intake.ts';

/** Where messages go as they arrive. */
export type TakeMessage = (message: Arrived, acknowledge: Acknowledge) => void;

/** One way in for messages: our own broker, or a session at another one. */
export interface MessagePort {
  readonly kind: 'embedded' | 'external';
  /** The port that sensors connect to; null where the broker is not ours. */
  readonly port: number | null;
  connected(): boolean;
  publish(topic: string, payload: string, options: { retain: boolean }): void;
  close(): Promise<void>;
}

/** The little of a log that ingest needs. */
export interface IngestLog {
  info(facts: object, text: string): void;
  warn(facts: object, text: string): void;
}
