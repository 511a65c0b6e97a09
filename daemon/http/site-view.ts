import type { Batch, BatchSummary, Lies, Move } from '../contract/batch.ts';
import type { Coat, TouchTest } from '../contract/coat.ts';
import type { Coating } from '../contract/coating.ts';
import type { AirChanges, BatchCurves, Curves } from '../contract/curves.ts';
import type { FitToBrush } from '../contract/fit-to-brush.ts';
import type { Reason } from '../contract/gate.ts';
import type { LockUp } from '../contract/lock-up.ts';
import type { MorningRound } from '../contract/morning-round.ts';
import type { NoticeChannels } from '../contract/notice-channel.ts';
import type { OverviewPlace } from '../contract/overview.ts';
import type { PlaceAir } from '../contract/place.ts';
import type { Plan } from '../contract/plan.ts';
import type { PlanAhead, PlanAheadQuery } from '../contract/plan-ahead.ts';
import type { BatchReport, Season } from '../contract/report.ts';
import type { BatchChart } from '../contract/series.ts';
import type { Tin } from '../contract/tin.ts';
import type { WhatHelpsReply } from '../contract/what-helps.ts';
import type { WoodProbe } from '../contract/wood-probe.ts';
import type {
  BatchFact,
  CoatFact,
  MoveFact,
  NoticeFact,
  PlaceFact,
  PlanFact,
  TouchTestFact,
} from '../rules/facts.ts';
import type { KnownFacts } from '../rules/known-facts.ts';
import type { PhotoFact } from '../rules/photo.ts';
import type { KeptCalibration } from '../rules/sensor-facts.ts';
import type { CoatingFact, TinFact } from '../rules/trade-facts.ts';
import type { TradeRules } from '../rules/usual-trade.ts';

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
  facts(): KnownFacts;
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
