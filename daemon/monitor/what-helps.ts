import type { WhatHelpsReply } from '../contract/what-helps.ts';
import { placeOfBatch } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { BatchFact, CoatFact, PlaceFact } from '../rules/facts.ts';
import { gateNeeds } from '../rules/gate-need.ts';
import { nextJob } from '../rules/next-job.ts';
import { ownTests } from '../rules/touch-knowledge.ts';
import { whatHelps } from '../rules/what-helps.ts';
import { absoluteHumidity } from '../science/air.ts';
import { estimatedWarmingHours } from '../science/board-warming.ts';
import { rateAt } from '../science/cure-rate.ts';
import { needCurve } from '../science/need-curve.ts';
import { whatIf } from '../science/what-if.ts';
import type { AirWatch } from './air-watch.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { CoatCures } from './coat-cure.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceNow } from './place-now.ts';
import type { PlaceOutlooks } from './place-outlook.ts';
import type { SiteFacts } from './site-facts.ts';

export interface HelpParts {
  facts: () => SiteFacts;
  assess: BatchAssessor;
  cures: CoatCures;
  knowledge: CoatKnowledge;
  outlooks: PlaceOutlooks;
  airing: AirWatch;
  placeNow: PlaceNow;
  models: ModelPair;
  boardSpread: number;
}

/** What is tried out: so much warmer, but no warmer than a room is kept, K and °C. Assumption. */
const tryWarmerK = 5;
const tryUpToC = 20;

/** What holds a batch back from its next job, and what would help most. */
export function helpFinder(parts: HelpParts) {
  const { facts, assess, cures, knowledge, outlooks, airing, placeNow, models } = parts;
  const { model, capC } = models.ruling;

  /** The coat if the place were kept warmer; null where nothing is known, or it is warm already. */
  function keptWarmer(
    batch: BatchFact,
    coat: CoatFact,
    gate: keyof typeof gateNeeds,
    placeId: string,
    tempC: number | null,
    now: number,
  ) {
    const outlook = outlooks.outlookAt(placeId)?.air ?? null;
    if (outlook === null || tempC === null || tempC >= tryUpToC - 1) return null;
    const toTempC = Math.min(tryUpToC, Math.round(tempC + tryWarmerK));
    const { requirement } = knowledge.requirementFor(coat);
    const { progress } = cures.cureOf(coat, now);
    const scale = gateNeeds[gate].multiple * knowledge.filmOf(coat);
    const own = ownTests(knowledge.testsOf(coat), gate);
    const boardLagHours = estimatedWarmingHours({
      thicknessMm: batch.boards.thicknessMm,
      openFaces: 2,
    });
    const question = {
      cureSoFar: { degreeHoursLow: progress.degreeHours, degreeHoursHigh: progress.degreeHours },
      need: needCurve(requirement, {
        boardSpread: parts.boardSpread,
        ...(own.failedAt === null ? {} : { failedAt: own.failedAt / scale }),
      }),
      model,
      capC,
      scale,
    };
    const asIs = whatIf(outlook, { kind: 'leave' }, question);
    const warmed = whatIf(outlook, { kind: 'heat', toTempC, boardLagHours }, question);
    return {
      asIsLikelyAt: asIs.ready.likely,
      leastDewMarginK: asIs.leastDewMarginK,
      warmer: { toTempC, likelyAt: warmed.ready.likely },
    };
  }

  /** Whether it carries less water outdoors than at a place; null where either is not known. */
  function isDrierOutside(placeId: string, now: number): boolean | null {
    const outdoors = [...facts().places.values()].find((place) => place.kind === 'outdoors');
    if (!outdoors) return null;
    const vapour = (id: string) => {
      const { tempC, rhPercent, stale } = placeNow(id, now);
      const isKnown = tempC !== null && rhPercent !== null && !stale;
      return isKnown ? absoluteHumidity(tempC, rhPercent, { over: 'water' }) : null;
    };
    const [inside, outside] = [vapour(placeId), vapour(outdoors.id)];
    return inside === null || outside === null ? null : outside < inside;
  }

  return (batch: BatchFact, now: number): WhatHelpsReply => {
    const { coats, plans, places, moves } = facts();
    const coat = (coats.get(batch.id) ?? []).at(-1) ?? null;
    const placeId = placeOfBatch(moves.get(batch.id) ?? [], now);
    const place: PlaceFact | undefined = placeId === null ? undefined : places.get(placeId);
    const coatCount = plans.get(batch.planId)?.coats.length ?? 0;
    const gate = nextJob(coat?.coat ?? null, coatCount, place?.kind ?? 'room');
    if (coat === null || gate === null || placeId === null) {
      return { batchId: batch.id, coatId: coat?.id ?? null, gate, holdsBack: [], helps: [] };
    }
    const verdict = assess.coat(coat, now).gates[gate];
    const air = placeNow(placeId, now);
    const tempC = air.stale ? null : air.tempC;
    const tried = keptWarmer(batch, coat, gate, placeId, tempC, now);
    const holdCodes = new Set(verdict.verdict === 'hold' ? holdWords : []);
    const helped = whatHelps({
      verdict: verdict.verdict,
      holds: verdict.reasons.filter((reason) => holdCodes.has(reason.code)),
      isIndoors: place?.kind === 'room' || place?.kind === 'rack',
      airflow: airing.verdictAt(placeId, now).verdict.airflow,
      tempC,
      rhPercent: air.stale ? null : air.rhPercent,
      isDrierOutside: isDrierOutside(placeId, now),
      solventHours: coat.mixture.turpentine > 0 ? (now - coat.finishedAt) / hourMs : null,
      isStandingStill: tempC !== null && rateAt(model, tempC) <= 0,
      failedTest: verdict.reasons.some((reason) => reason.code === 'failed-test'),
      likelyAt: tried?.asIsLikelyAt ?? null,
      warmer: tried?.warmer ?? null,
      leastDewMarginK: tried?.leastDewMarginK ?? null,
    });
    return { batchId: batch.id, coatId: coat.id, gate, ...helped };
  };
}

/** Codes of the reasons that forbid a job for something else than the cure. */
const holdWords = [
  'air-unknown',
  'air-cold',
  'air-hot',
  'air-damp',
  'air-near-dew',
  'was-wet',
  'plan-hours',
  'plan-degree-hours',
];
