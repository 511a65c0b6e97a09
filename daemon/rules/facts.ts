import type { Boards, RemarkKind, Species } from '../contract/batch.ts';
import type { Gate } from '../contract/gate.ts';
import type { LockUpLine } from '../contract/lock-up.ts';
import type { NoticeKind } from '../contract/notice.ts';
import type { PlaceKind } from '../contract/place.ts';
import type { Face, Mixture, PlannedCoat, PlanUse, Surface } from '../contract/plan.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { Said, Told } from '../contract/sentence.ts';
import type { TimberFact } from './trade-facts.ts';

/*
 * What was recorded of places, boards and coats, and readings on their way in, as plain data. Every
 * `at` is UTC epoch milliseconds; null means unknown, and so does a field that is left out.
 */

export interface PlaceFact {
  id: string;
  name: string;
  kind: PlaceKind;
  within: string | null;
  volumeM3: number | null;
  facing: 'north' | 'east' | 'south' | 'west' | null;
  exposure: 'open' | 'under-eaves' | 'shade' | null;
  /** Running metres of boards that a rack takes. */
  capacityM?: number | null;
  capacityBoards?: number | null;
  createdAt: number;
}

export interface PlanFact {
  id: string;
  name: string;
  surface: Surface;
  coats: PlannedCoat[];
  isDefault: boolean;
  createdAt: number;
  /** Id of the first version; its own where left out. */
  familyId?: string | null;
  version?: number;
  use?: PlanUse | null;
}

export interface BatchFact {
  id: string;
  name: string;
  species: Species;
  surface: Surface;
  boards: Boards;
  planId: string;
  createdAt: number;
  closedAt: number | null;
  timber?: TimberFact | null;
}

/** A batch lies at a place from a moment on (null: from ever) until its next move. */
export interface MoveFact {
  id: string;
  batchId: string;
  placeId: string;
  at: number | null;
}

export interface CoatFact {
  id: string;
  batchId: string;
  coat: number;
  begunAt: number | null;
  finishedAt: number;
  mixture: Mixture;
  faces: Face[];
  usedL: number | null;
  colour: string | null;
  tin: string | null;
  tinId?: string | null;
  /** The version of the plan it was put on by; that of its batch where left out. */
  planId?: string | null;
  /** The batch it was recorded at, where these boards were a part of that then; never kept. */
  originId?: string;
}

export interface TouchTestFact {
  id: string;
  batchId: string;
  coatId: string;
  at: number;
  gate: Gate;
  passed: boolean;
  on: 'board' | 'offcut';
  learnedBy?: 'touch' | 'outcome' | null;
  /** When it was written down. */
  recordedAt?: number;
}

export interface RemarkFact {
  id: string;
  batchId: string;
  at: number;
  kind: RemarkKind;
  text: string | null;
  /** The sentence of the text, where nobody typed it. */
  told?: Told | null;
  automatic?: boolean;
}

export interface HandReadingFact {
  id: string;
  placeId: string | null;
  batchId: string | null;
  quantity: Quantity;
  values: number[];
  at: number;
}

export interface NoticeFact {
  id: string;
  kind: NoticeKind;
  subject: string;
  text: string;
  /** The sentence of the text, where it was kept. */
  told?: Told | null;
  raisedAt: number;
  seenAt: number | null;
  clearedAt: number | null;
  /** How often it was told again, and when last. */
  repeats: number;
  repeatedAt: number | null;
}

/** A notice that is raised just now: told for the first time. */
export type NewNoticeFact = Omit<NoticeFact, 'repeats' | 'repeatedAt'>;

/** A tick on the lock-up list of a day, or one taken back. */
export interface LockUpTickFact {
  id: string;
  /** Day of the site, `yyyy-mm-dd`. */
  day: string;
  line: LockUpLine;
  done: boolean;
  at: number;
  /** Who ticked; null where nobody said. */
  by: string | null;
}

/** One reading as kept: the raw value as sent, in the unit of its quantity. */
export interface ReadingFact {
  sensorKey: number;
  quantity: Quantity;
  at: number;
  raw: number;
  /** Bit mask of what was done about its time; 0 when nothing. */
  flags: number;
}

/** A reading on its way in; the sensor is known by its topic only. */
export interface IncomingReading {
  sensor: string;
  quantity: Quantity;
  at: number;
  raw: number;
  flags: number;
}

/** A reading that came while the computer’s clock was not trusted. */
export interface PendingReading extends Omit<IncomingReading, 'at'> {
  /** Names the running of the computer during which it came. */
  boot: string;
  /** How long the computer had been running when it was measured, ms. */
  monotonicMs: number;
  /** The time it gives itself, to be judged once the clock is trusted; null for none. */
  ownAt: number | null;
}

/** The same as kept, with its place in the order of arrival. */
export interface KeptPendingReading extends PendingReading {
  rank: number;
}

/** What one running of the computer left waiting for the clock. */
export interface PendingBoot {
  boot: string;
  firstMs: number;
  lastMs: number;
  count: number;
}

/** A message that could not be taken as a reading, as kept for inspection. */
export interface RefusedMessage {
  at: number;
  topic: string;
  code: string;
  detail: string;
  /** The detail as a sentence; left out where the text is all there is. */
  detailSaid?: Said;
  payloadStart: string;
  payloadBytes: number;
}

/** A QoS 2 message that its sender has not released, by the number it gave it. */
export interface OpenMessage {
  client: string;
  messageId: number;
  /** Tells it from another message of the same number. */
  content: string;
}

/** The same as kept. */
export interface KeptOpenMessage extends OpenMessage {
  openedAt: number;
  /** Written to this very file; false in one that is a copy. */
  isOwn: boolean;
}

/** What is committed together. */
export interface ReadingGroup {
  readings: IncomingReading[];
  refused: RefusedMessage[];
  /** Readings that wait for the clock. */
  pending?: PendingReading[];
  /** Messages that must not be taken again, also after a restart. */
  opened?: OpenMessage[];
  /** Messages of before that will not come again. */
  released?: Omit<OpenMessage, 'content'>[];
  /** Arrival time, for sensors and messages that appear with this group. */
  arrivedAt: number;
}

/** One hour of a weather forecast for outdoors. */
export interface OutdoorForecastPoint {
  at: number;
  tempC: number;
  /** Left out where the forecast does not tell it. */
  rhPercent?: number;
  /** Rain within the hour, mm. */
  rainMm?: number;
}
