import type { TlsPair } from './broker-listeners.ts';
import type { Acknowledge } from './group-commit.ts';
import type { CutOff } from './guard-sockets.ts';
import type { Arrived } from './intake.ts';

/** Where messages go as they arrive. */
export type TakeMessage = (message: Arrived, acknowledge: Acknowledge) => void;

/** How clients of the embedded broker behave, since the start. */
export interface BrokerTraffic {
  /** Open just now. */
  connections: number;
  /** Messages at QoS 0: nobody sends them again. */
  bestEffort: number;
  /** Connections that were not let in: no name, or a wrong password. */
  refused: number;
  /** Messages and subscriptions that were not allowed. */
  notAllowed: number;
  /** Messages to be kept that were passed on only: too many are kept. */
  retainDropped: number;
  /** Connections that were ended by us, or refused, by reason. */
  cutOff: Record<CutOff, number>;
}

/** One way in for messages: our own broker, or a session at another one. */
export interface MessagePort {
  readonly kind: 'embedded' | 'external';
  /** The port that sensors connect to; null where the broker is not ours, or speaks TLS only. */
  readonly port: number | null;
  /** The same for TLS. */
  readonly tlsPort?: number | null;
  /** Takes a renewed certificate into use. */
  renewTls?(pair: TlsPair): void;
  connected(): boolean;
  /** Null where the broker is not ours. */
  traffic(): BrokerTraffic | null;
  /** Listens to these topics beside the site's own; our own broker brings all of them anyway. */
  listenTo(filters: readonly string[]): void;
  publish(topic: string, payload: string, options: { retain: boolean }): void;
  /** Sends a message that is not kept; settles once the broker has it, and rejects where it has not. */
  deliver(topic: string, payload: string): Promise<void>;
  close(): Promise<void>;
}

/** The little of a log that ingest needs. */
export interface IngestLog {
  info(facts: object, text: string): void;
  warn(facts: object, text: string): void;
}
