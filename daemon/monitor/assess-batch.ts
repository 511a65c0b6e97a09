import type { Batch, BatchSummary } from '../contract/batch.ts';
import type { Coat, TouchTest } from '../contract/coat.ts';
import { type Gate, type GateVerdict, gates, type Reason } from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import type { AirVerdict } from '../rules/air-verdict.ts';
import { curedUntil, placeOfBatch } from '../rules/batch.ts';
import { brushHolds } from '../rules/brush-air.ts';
import { hourMs } from '../rules/cure-span.ts';
import { handReadingReply, moveReply, planReply, remarkReply } from '../rules/fact-reply.ts';
import type { BatchFact, CoatFact, TouchTestFact } from '../rules/facts.ts';
import { gateVerdict, type VerdictLimits } from '../rules/gate-verdict.ts';
import { airSources } from '../rules/place.ts';
import { type SolventQuestion, solventCautions } from '../rules/solvent-air.ts';
import { stageOf } from '../rules/stage.ts';
import { ownTests } from '../rules/touch-knowledge.ts';
import type { AirChange } from '../science/airflow.ts';
import { boardArea } from '../science/paint.ts';
import type { CoatCures } from './coat-cure.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceNow } from './place-now.ts';
import type { SiteFacts } from './site-facts.ts';

interface AssessParts {
  facts: () => SiteFacts;
  cures: CoatCures;
  knowledge: CoatKnowledge;
  placeNow: PlaceNow;
  models: ModelPair;
  limits: VerdictLimits;
  isSettling: () => boolean;
  airflowAt: (placeId: string, now: number) => AirVerdict;
  airChangeAt: (placeId: string, now: number) => AirChange | null;
  /** Exposure limit of the local rules, ppm; null for the lowest published one. */
  localLimitPpm(): number | null;
}

/** Batches and coats as the outside sees them: what was recorded, and what is made of it now. */
export function batchAssessor(parts: AssessParts) {
  const { facts, cures, knowledge, placeNow, models, limits, isSettling, airflowAt } = parts;
  const { rate } = models.ruling.model;

  function coat(fact: CoatFact, now: number): Coat {
    const { batches, plans, coats, moves } = facts();
    const batch = batches.get(fact.batchId);
    const planned = batch ? plans.get(batch.planId)?.coats[fact.coat] : undefined;
    const cure = cures.cureOf(fact, now);
    const film = knowledge.filmOf(fact);
    const tests = knowledge.testsOf(fact);
    const { requirement, learnedFrom } = knowledge.requirementFor(fact);
    const siblings = coats.get(fact.batchId) ?? [];
    const isLast = curedUntil(fact, siblings) === null;
    const placeId = placeOfBatch(moves.get(fact.batchId) ?? [], now);
    const stillAir = isLast && placeId !== null && airflowAt(placeId, now).airflow === 'poor';
    const verdict = (gate: Gate): GateVerdict => {
      const answer = gateVerdict({
        gate,
        progress: cure.progress,
        outlooks: cure.outlooks,
        gaining: cure.gaining,
        staleForMs: cure.staleForMs,
        requirement,
        learnedFrom,
        film,
        own: ownTests(tests, gate),
        holds: gate === 'recoat' && isLast && placeId ? brushHolds(placeNow(placeId, now)) : [],
        limits,
        stillAir,
        now,
      });
      return {
        verdict: answer.verdict,
        probability: answer.probability,
        early: toMoment(answer.earlyAt),
        likely: toMoment(answer.likelyAt),
        late: toMoment(answer.lateAt),
        requiredDegreeHours: answer.required,
        reasons: answer.reasons,
      };
    };
    const verdicts = Object.fromEntries(gates.map((gate) => [gate, verdict(gate)])) as Record<
      Gate,
      GateVerdict
    >;
    const { progress } = cure;
    return {
      id: fact.id,
      coat: fact.coat,
      name: planned?.name ?? `Coat ${fact.coat + 1}`,
      begunAt: toMoment(fact.begunAt),
      finishedAt: toMoment(fact.finishedAt),
      curedUntil: toMoment(curedUntil(fact, siblings)),
      mixture: fact.mixture,
      faces: fact.faces,
      usedL: fact.usedL,
      colour: fact.colour,
      tin: fact.tin,
      model: {
        rate,
        datumC: models.ruling.model.rate === 'nurse-saul' ? models.ruling.model.datumC : null,
        maxGapHours: models.ruling.model.maxGapHours,
      },
      degreeHours: progress.uncappedDegreeHours,
      degreeHoursLow: progress.uncappedDegreeHours,
      degreeHoursHigh: progress.degreeHoursHigh,
      equivalentHours: cure.equivalentHours,
      arrheniusEquivalentHours:
        rate === 'arrhenius' ? cure.equivalentHours : cure.besideEquivalentHours,
      coveredHours: progress.coveredHours,
      gapHours: progress.gapHours,
      requiredDegreeHours: verdicts.recoat.requiredDegreeHours.likely,
      cautions: isLast ? cautionsAbout(fact, placeId, now) : [],
      stage: stageOf(requirement, progress.degreeHours, film, limits.readyAt, limits.boardSpread),
      gates: verdicts,
    };
  }

  function cautionsAbout(fact: CoatFact, placeId: string | null, now: number): Reason[] {
    const question = placeId === null ? null : solventQuestion(fact, placeId, now)?.question;
    return question ? solventCautions(question) : [];
  }

  /** What a coat’s solvent is about, and the room it leaves into; null where that is not known. */
  function solventQuestion(fact: CoatFact, placeId: string, now: number) {
    const { batches, plans, places } = facts();
    const batch = batches.get(fact.batchId);
    const planned = batch ? plans.get(batch.planId)?.coats[fact.coat] : undefined;
    if (!batch || !planned) return null;
    const areaM2 = boardArea({ ...batch.boards, faces: fact.faces });
    const room = airSources(places, placeId)
      .map((id) => places.get(id))
      .find((place) => place?.kind === 'room');
    const airChange = room ? parts.airChangeAt(room.id, now) : null;
    const question: SolventQuestion = {
      mixture: fact.mixture,
      mixedL: fact.usedL ?? areaM2 / planned.spreadingM2PerL,
      hoursSince: (now - fact.finishedAt) / hourMs,
      volumeM3: room?.volumeM3 ?? null,
      airChangesPerHour: airChange?.identifiable ? (airChange.low ?? null) : null,
      localLimitPpm: parts.localLimitPpm(),
    };
    return { room: room ?? null, question };
  }

  function touchTest(fact: TouchTestFact): TouchTest {
    const of = facts()
      .coats.get(fact.batchId)
      ?.find((other) => other.id === fact.coatId);
    return {
      id: fact.id,
      coatId: fact.coatId,
      at: toMoment(fact.at),
      gate: fact.gate,
      passed: fact.passed,
      on: fact.on,
      degreeHours: of ? cures.degreeHoursAt(of, fact.at) : 0,
    };
  }

  function batch(fact: BatchFact, now: number): Batch {
    const { plans, coats, moves, tests, remarks, handReadings } = facts();
    const plan = plans.get(fact.planId);
    if (!plan) throw new Error(`The batch ${fact.id} has no coating plan.`);
    const ofBatch = coats.get(fact.id) ?? [];
    return {
      ...summary(fact, now),
      plan: planReply(plan),
      coats: ofBatch.map((one) => coat(one, now)),
      moves: (moves.get(fact.id) ?? []).map(moveReply),
      tests: ofBatch.flatMap((one) => tests.get(one.id) ?? []).map(touchTest),
      remarks: (remarks.get(fact.id) ?? []).map(remarkReply),
      handReadings: handReadings.filter((one) => one.batchId === fact.id).map(handReadingReply),
      recomputing: isSettling(),
    };
  }

  function summary(fact: BatchFact, now: number): BatchSummary {
    const placeId = placeOfBatch(facts().moves.get(fact.id) ?? [], now);
    if (placeId === null) throw new Error(`The batch ${fact.id} lies nowhere.`);
    return {
      id: fact.id,
      name: fact.name,
      placeId,
      species: fact.species,
      surface: fact.surface,
      boards: fact.boards,
      planId: fact.planId,
      closed: fact.closedAt !== null,
      createdAt: toMoment(fact.createdAt),
    };
  }

  return { batch, summary, coat, touchTest, solventQuestion };
}
export type BatchAssessor = ReturnType<typeof batchAssessor>;
