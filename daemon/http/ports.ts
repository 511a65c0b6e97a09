import type { Batch, BatchSummary, Lies, Move } from '../contract/batch.ts';
import type { CalibrationHow } from '../contract/calibration.ts';
import type { Coat, TouchTest } from '../contract/coat.ts';
import type { Coating } from '../contract/coating.ts';
import type { ComparedQuantity } from '../contract/comparison.ts';
import type { AirChanges, BatchCurves, Curves } from '../contract/curves.ts';
import type { FitToBrush } from '../contract/fit-to-brush.ts';
import type { Reason } from '../contract/gate.ts';
import type { Health } from '../contract/health.ts';
import type { Language } from '../contract/language.ts';
import type { LockUp } from '../contract/lock-up.ts';
import type { MorningRound } from '../contract/morning-round.ts';
import type { NoticeChannels } from '../contract/notice-channel.ts';
import type { OverviewPlace } from '../contract/overview.ts';
import type { PlaceAir } from '../contract/place.ts';
import type { Plan } from '../contract/plan.ts';
import type { PlanAhead, PlanAheadQuery } from '../contract/plan-ahead.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { BatchReport, Season } from '../contract/report.ts';
import type { Said } from '../contract/sentence.ts';
import type { BatchChart } from '../contract/series.ts';
import type { Tin } from '../contract/tin.ts';
import type { WhatHelpsReply } from '../contract/what-helps.ts';
import type { WoodProbe } from '../contract/wood-probe.ts';
import type {
  BatchFact,
  CalibrationFact,
  CoatFact,
  FaultFact,
  HandReadingFact,
  KeptCalibration,
  LockUpTickFact,
  MoveFact,
  NewNoticeFact,
  NoticeFact,
  PlaceFact,
  PlanFact,
  ReadingFact,
  RefusedMessage,
  RemarkFact,
  SensorFact,
  SensorStay,
  TouchTestFact,
} from '../rules/facts.ts';
import type { PhotoFact } from '../rules/photo.ts';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import type {
  CoatingFact,
  CoatingStepFact,
  MergeFact,
  MountingTickFact,
  SplitFact,
  TinFact,
} from '../rules/trade-facts.ts';
import type { TradeRules } from '../rules/usual-trade.ts';
import type { Voice } from '../wording/voice.ts';
import type { AccessPort } from './access-port.ts';
import type { MqttAccessPort } from './mqtt-access-port.ts';
import type { OwnSitePort } from './own-site-port.ts';
import type { ServerLimits } from './server-limits.ts';
import type { SettingPort } from './setting-port.ts';
import type { TopicRulePort } from './topic-rule-port.ts';

/* What the pages and the API need of the house; handed over by main. */

export interface SiteFactsView {
  places: ReadonlyMap<string, PlaceFact>;
  sensors: ReadonlyMap<number, SensorFact>;
  stays: ReadonlyMap<number, readonly SensorStay[]>;
  plans: ReadonlyMap<string, PlanFact>;
  batches: ReadonlyMap<string, BatchFact>;
  moves: ReadonlyMap<string, readonly MoveFact[]>;
  coats: ReadonlyMap<string, readonly CoatFact[]>;
  tests: ReadonlyMap<string, readonly TouchTestFact[]>;
  remarks: ReadonlyMap<string, readonly RemarkFact[]>;
  handReadings: readonly HandReadingFact[];
  calibrations: readonly CalibrationFact[];
  faults: readonly FaultFact[];
  begun: readonly BatchFact[];
  splits: readonly SplitFact[];
  merges: readonly MergeFact[];
  tins: ReadonlyMap<string, TinFact>;
  coatings: ReadonlyMap<string, readonly CoatingFact[]>;
}

/** What the trade’s facts come to. */
export interface TradeView {
  rules: TradeRules;
  plan(plan: PlanFact): Plan;
  tin(tin: TinFact, now: number): Tin;
  lies(batchId: string, at: number): Lies;
  warningsAt(placeId: string, now: number): Reason[];
  coating(coating: CoatingFact): Coating;
  /** Every coat once, at the batch where it was recorded. */
  recordedCoats(): CoatFact[];
  /** Area that a coat covered, m²; null where its batch is gone. */
  areaOf(coat: CoatFact): number | null;
}

/** What a curve is asked for; times in UTC epoch ms, null for the usual ones. */
interface CurveSpan {
  from: number | null;
  to: number | null;
  points: number;
}

/** Curves of places, sensors and coats. */
export interface CurvesView {
  ofPlace(placeId: string, span: CurveSpan, now: number): Curves;
  ofSensor(sensorKey: number, span: CurveSpan, now: number): Curves;
  ofBatch(batchId: string, coat: CoatFact | null, span: CurveSpan, now: number): BatchCurves;
  airChanges(placeId: string, span: CurveSpan, now: number): Promise<AirChanges>;
}

/** What is known and made of it, at a moment. */
export interface SiteView {
  facts(): SiteFactsView;
  air(placeId: string, now: number): PlaceAir;
  places(now: number): OverviewPlace[];
  batch(batch: BatchFact, now: number): Batch;
  summary(batch: BatchFact, now: number): BatchSummary;
  coat(coat: CoatFact, now: number): Coat;
  touchTest(test: TouchTestFact): TouchTest;
  fitToBrush(place: PlaceFact, batch: BatchFact | null, now: number): FitToBrush;
  /** @param day - `yyyy-mm-dd`; today when left out */
  lockUp(now: number, day?: string): LockUp;
  noticeChannels(): NoticeChannels;
  move(move: MoveFact): Move;
  trade: TradeView;
  morningRound(now: number): MorningRound;
  chart(batchId: string, points: number, now: number): BatchChart;
  curves: CurvesView;
  notices(): NoticeFact[];
  wood: {
    /** What a probe tells; null for a sensor without pins. */
    probe(sensorKey: number, now: number): WoodProbe | null;
    /** The first `limit` moistures that a probe’s resistances from `from` to `to` amount to. */
    moistureBetween(
      sensorKey: number,
      from: number,
      to: number,
      limit: number,
    ): { at: number; raw: number; value: number }[];
  };
  /** @throws BoardcureError where what is asked about cannot be reckoned */
  planAhead(asked: (PlanAheadQuery & { boards: number }) | null, now: number): PlanAhead;
  whatHelps(batch: BatchFact, now: number): WhatHelpsReply;
  report(batch: BatchFact, now: number): Omit<BatchReport, 'site' | 'photos'>;
  season(from: number | null, to: number | null, now: number): Season;
  /** Photos of a batch, in the order of time. */
  photos(batchId: string): PhotoFact[];
  photo(id: string): (PhotoFact & { picture: Uint8Array }) | null;
  /** Also those that were corrected or withdrawn, in the order they were recorded. */
  calibrationHistory(): KeptCalibration[];
}

/** What people may record; each settles when it is on disk and worked in. */
export interface Edits {
  createPlace(place: PlaceFact): Promise<void>;
  changePlace(place: PlaceFact, at: number): Promise<void>;
  createPlan(plan: PlanFact): Promise<void>;
  createBatch(batch: BatchFact, firstMove: MoveFact): Promise<void>;
  /** What is left out stays as it was. */
  changeBatch(
    batch: Pick<BatchFact, 'id' | 'name' | 'closedAt'> &
      Partial<Pick<BatchFact, 'planId' | 'timber'>>,
    at: number,
  ): Promise<void>;
  createMove(move: MoveFact, recordedAt: number): Promise<void>;
  /** @param caution - raised with the coat if it is new; null for none */
  createCoat(coat: CoatFact, recordedAt: number, caution: NewNoticeFact | null): Promise<void>;
  removeCoat(coat: Pick<CoatFact, 'id' | 'batchId'>, at: number): Promise<void>;
  createSplit(
    split: SplitFact,
    child: BatchFact,
    move: MoveFact | null,
    recordedAt: number,
  ): Promise<void>;
  createMerge(merge: MergeFact, recordedAt: number): Promise<void>;
  tickMounting(tick: MountingTickFact, done: boolean, recordedAt: number): Promise<void>;
  createTin(tin: TinFact): Promise<void>;
  changeTin(tin: TinFact, at: number): Promise<void>;
  beginCoating(coating: CoatingFact, recordedAt: number): Promise<void>;
  tickCoating(step: CoatingStepFact, done: boolean, recordedAt: number): Promise<void>;
  /** @param coat - that it became; null when it was given up */
  endCoating(
    coating: CoatingFact,
    coat: CoatFact | null,
    recordedAt: number,
    caution: NewNoticeFact | null,
  ): Promise<void>;
  createTest(test: TouchTestFact, recordedAt: number): Promise<void>;
  createRemark(remark: RemarkFact, recordedAt: number): Promise<void>;
  createHandReading(reading: HandReadingFact, recordedAt: number): Promise<void>;
  renameSensor(key: number, id: string, name: string | null, at: number): Promise<void>;
  placeSensor(stay: SensorStay, id: string, at: number): Promise<void>;
  describeSensor(
    sensor: Pick<SensorFact, 'key' | 'id' | 'height' | 'species'>,
    at: number,
  ): Promise<void>;
  createCalibrations(calibrations: CalibrationFact[], at: number): Promise<void>;
  changeCalibration(calibration: CalibrationFact, at: number): Promise<void>;
  withdrawCalibration(id: string, at: number): Promise<void>;
  /** @param name - on the pages; null for that of the topics */
  nameSite(name: string | null, at: number): Promise<void>;
  seeNotice(id: string, at: number): Promise<void>;
  tickLockUp(tick: LockUpTickFact, recordedAt: number): Promise<void>;
  addPhoto(photo: Omit<PhotoFact, 'bytes'>, picture: Uint8Array, at: number): Promise<void>;
  removePhoto(id: string, at: number): Promise<void>;
}

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
