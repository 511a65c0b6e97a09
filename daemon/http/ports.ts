import type { CalibrationHow } from '../contract/calibration.ts';
import type { ComparedQuantity } from '../contract/comparison.ts';
import type { Health } from '../contract/health.ts';
import type { Language } from '../contract/language.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { Said } from '../contract/sentence.ts';
import type { ReadingFact, RefusedMessage } from '../rules/facts.ts';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import type { Voice } from '../wording/voice.ts';
import type { AccessPort } from './access-port.ts';
import type { Edits } from './edits.ts';
import type { MqttAccessPort } from './mqtt-access-port.ts';
import type { OwnSitePort } from './own-site-port.ts';
import type { ServerLimits } from './server-limits.ts';
import type { SettingPort } from './setting-port.ts';
import type { SiteView } from './site-view.ts';
import type { TopicRulePort } from './topic-rule-port.ts';

/* What the pages and the API need of the house; handed over by main. */

export interface Readings {
  /** The first `limit` readings from `from` to `to`, both included, ascending. */
  readingsBetween(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    limit: number,
  ): ReadingFact[];
  /**
   * The extremes of each hour of a span, both its ends included, or of days where it is long, and
   * where there are readings; left out, all readings are looked at instead.
   *
   * @param changes - when another calibration begins, epoch ms
   */
  readingOutline?(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    points: number,
    changes: readonly number[],
  ): ReadingOutline;
  newestReading(sensorKey: number, quantity: Quantity): ReadingFact | null;
  corrected(reading: Pick<ReadingFact, 'sensorKey' | 'quantity' | 'at' | 'raw'>): number;
  refused(): RefusedMessage[];
}

/** What calibrations amount to, and what sensors in one box say of each other. */
export interface Trust {
  calibrationFault(quantity: Quantity, how: CalibrationHow): { pointer: string; said: Said } | null;
  calibrationLine(quantity: Quantity, how: CalibrationHow): { gain: number; add: number };
  boxQuantities: readonly Quantity[];
  /** @param box - at least two sensors, each with its points ascending */
  compareInBox(
    quantity: Quantity,
    box: readonly { sensor: string; points: readonly { at: number; value: number }[] }[],
  ): ComparedQuantity;
  /** The calibration that gives what another one gives (null: none), and so much more. */
  shifted(quantity: Quantity, how: CalibrationHow | null, change: number): CalibrationHow;
}

export interface HttpParts {
  site: string;
  ownSite: OwnSitePort;
  settings: SettingPort;
  access: AccessPort;
  mqttAccess: MqttAccessPort;
  /** Names that the pages are opened under besides IP addresses. */
  names: readonly string[];
  limits: ServerLimits;
  /** For pages over TLS; without it they are plain. */
  tls?: { pair(): { cert: string; key: string } };
  /** Certificate of the authority that was made here, as PEM; null where none was. */
  authority?(): string | null;
  view: SiteView;
  edits: Edits;
  readings: Readings;
  topicRules: TopicRulePort;
  trust: Trust;
  /** How the intake does; without the time. */
  health(): Omit<Health, 'now'> & { connected: boolean };
  now(): number;
  speed(): number;
  newId(): string;
  /** Calls back after anything that a page shows has changed; returns how to stop. */
  onChange(listener: (batchId: string | null) => void): () => void;
  /** IANA name of the site’s time zone. */
  timeZone: string;
  /** Speaks the site’s language, for what no reader’s page says. */
  voice: Voice;
  language: Language;
  /** Folder of the built dashboard; null when there is none. */
  dashboardFolder: string | null;
  longestGapMs: number;
  /** Pages that may listen to the stream at once. */
  maxStreams(): number;
  /** Figures for a collector; left out, there are none to be had. */
  metrics?: {
    contentType: string;
    text(): Promise<string>;
    responded(status: number): void;
    /** Told how many pages listen to the stream. */
    pagesListen(count: number): void;
  };
  log: { warn(facts: object, text: string): void; error(facts: object, text: string): void };
}
