import type { Coat } from '../contract/coat.ts';
import {
  type Gate,
  type GateVerdict,
  gates,
  type Reason,
  type VerdictWord,
} from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import type { AirVerdict } from '../rules/air-verdict.ts';
import { curedUntil, placeOfBatch } from '../rules/batch.ts';
import { batchOfHistory } from '../rules/batch-lineage.ts';
import { brushHolds } from '../rules/brush-air.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import { planHolds } from '../rules/gate-limits.ts';
import {
  type GateQuestion,
  gateVerdict,
  gateWord,
  type VerdictLimits,
} from '../rules/gate-verdict.ts';
import { wetHolds } from '../rules/remark-cure.ts';
import { stageOf } from '../rules/stage.ts';
import { ownTests } from '../rules/touch-knowledge.ts';
import { sentence } from '../wording/english.ts';
import type { CoatCure, CoatCures } from './coat-cure.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import { type MindedParts, mindedOfCoats } from './coat-minded.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceNow } from './place-now.ts';
import type { SensorDoubts } from './sensor-trust.ts';
import { batchOfCoat, plannedCoatOf } from './site-facts.ts';
import { isSlower, speakingFor } from './slower-boards.ts';

export interface CoatParts extends MindedParts {
  cures: CoatCures;
  knowledge: CoatKnowledge;
  placeNow: PlaceNow;
  models: ModelPair;
  limits: VerdictLimits;
  doubts: SensorDoubts;
  airflowAt: (placeId: string, now: number) => AirVerdict;
}

/** Coats as the outside sees them: what was recorded, and what is made of it now. */
export function coatAssessor(parts: CoatParts) {
  const { facts, cures, knowledge, placeNow, models, limits, trade } = parts;
  const { rate } = models.ruling.model;
  const minded = mindedOfCoats(parts);

  /** A coat on the boards of one history. */
  function onBoards(fact: CoatFact, now: number): Coat {
    const { coats, moves } = facts();
    const planned = plannedCoatOf(facts(), fact);
    const cure = cures.cureOf(fact, now);
    const film = knowledge.filmOf(fact);
    const { requirement } = knowledge.requirementFor(fact);
    const siblings = coats.get(fact.batchId) ?? [];
    const isLast = curedUntil(fact, siblings) === null;
    const placeId = placeOfBatch(moves.get(fact.batchId) ?? [], now);
    const verdicts = verdictsOn(fact, cure, isLast ? placeId : null, now);
    const { progress } = cure;
    const areaM2 = trade.areaOf(fact) ?? 0;
    return {
      id: fact.id,
      coat: fact.coat,
      name: planned?.name ?? sentence('coat-name/number', { number: fact.coat + 1 }).text,
      begunAt: toMoment(fact.begunAt),
      finishedAt: toMoment(fact.finishedAt),
      curedUntil: toMoment(curedUntil(fact, siblings)),
      mixture: fact.mixture,
      faces: fact.faces,
      usedL: fact.usedL,
      colour: fact.colour,
      tin: fact.tin,
      tinId: fact.tinId ?? null,
      planId: fact.planId ?? batchOfCoat(facts(), fact)?.planId ?? '',
      areaM2,
      spreadingM2PerL: fact.usedL === null || areaM2 <= 0 ? null : areaM2 / fact.usedL,
      inherited: fact.originId !== undefined && fact.originId !== fact.batchId,
      speaksFor: null,
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
      cautions: isLast ? minded.cautionsAbout(fact, placeId, now) : [],
      stage: stageOf(requirement, progress.degreeHours, film, limits.readyAt, limits.boardSpread),
      gates: verdicts,
    };
  }

  /**
   * What is asked about a coat and a job.
   *
   * @param placeId - where the coat cures now; null once it is over
   */
  function questionsOn(fact: CoatFact, cure: CoatCure, placeId: string | null, now: number) {
    const film = knowledge.filmOf(fact);
    const tests = knowledge.testsOf(fact);
    const { requirement, learnedFrom } = knowledge.requirementFor(fact);
    const planned = plannedCoatOf(facts(), fact);
    const hoursSince = (now - fact.finishedAt) / hourMs;
    return (gate: Gate): GateQuestion => {
      const brush = gate === 'recoat' && placeId !== null;
      return {
        gate,
        progress: cure.progress,
        outlooks: cure.outlooks,
        gaining: cure.gaining,
        staleForMs: cure.staleForMs,
        requirement,
        learnedFrom,
        film,
        own: ownTests(tests, gate),
        holds: [
          ...(brush ? brushHolds(placeNow(placeId, now), trade.rules.application) : []),
          ...(brush ? doubtsAt(placeId, now) : []),
          ...(brush ? wetHolds(fact, facts().remarks.get(fact.batchId) ?? []) : []),
          ...planHolds(planned, gate, hoursSince, cure.progress.degreeHours),
        ],
        limits,
        stillAir: placeId !== null && parts.airflowAt(placeId, now).airflow === 'poor',
        paintDoubts: trade.doubtsAbout(fact),
        now,
      };
    };
  }

  function doubtsAt(placeId: string, now: number): Reason[] {
    const { dewMarginK } = trade.rules.application;
    return parts.doubts.holds(placeId, placeNow(placeId, now), dewMarginK, now);
  }

  function verdictsOn(fact: CoatFact, cure: CoatCure, placeId: string | null, now: number) {
    const questionOn = questionsOn(fact, cure, placeId, now);
    const verdict = (gate: Gate): GateVerdict => {
      const brush = gate === 'recoat' && placeId !== null;
      const answer = gateVerdict(questionOn(gate));
      return {
        verdict: answer.verdict,
        probability: answer.probability,
        early: toMoment(answer.earlyAt),
        likely: toMoment(answer.likelyAt),
        late: toMoment(answer.lateAt),
        requiredDegreeHours: answer.required,
        reasons: [
          ...answer.reasons,
          ...(placeId === null
            ? []
            : parts.doubts.reasons(placeId, placeNow(placeId, now).tempC, now)),
          ...(brush
            ? [...minded.outdoorReasons(placeId, now), ...minded.standingReasons(fact, now)]
            : []),
        ],
      };
    };
    return Object.fromEntries(gates.map((gate) => [gate, verdict(gate)])) as Record<
      Gate,
      GateVerdict
    >;
  }

  /** The verdicts alone, on the boards of this history, for whoever needs no times: those cost most. */
  function words(fact: CoatFact, now: number): Record<Gate, VerdictWord> {
    const { coats, moves } = facts();
    const isLast = curedUntil(fact, coats.get(fact.batchId) ?? []) === null;
    const placeId = isLast ? placeOfBatch(moves.get(fact.batchId) ?? [], now) : null;
    const ask = questionsOn(fact, cures.cureOf(fact, now, 'sums alone'), placeId, now);
    return Object.fromEntries(gates.map((gate) => [gate, gateWord(ask(gate)).verdict])) as Record<
      Gate,
      VerdictWord
    >;
  }

  function assessed(fact: CoatFact, now: number): Coat {
    const own = onBoards(fact, now);
    const { companions, coats } = facts();
    let slowest = own;
    let from: CoatFact | null = null;
    for (const id of companions.get(fact.batchId) ?? []) {
      const other = (coats.get(id) ?? []).find((one) => one.coat === fact.coat);
      if (!other) continue;
      const theirs = onBoards(other, now);
      if (!isSlower(theirs, slowest)) continue;
      slowest = theirs;
      from = other;
    }
    return from === null ? own : speakingFor(own, slowest, nameOf(from));
  }

  function nameOf(coat: CoatFact): NonNullable<Coat['speaksFor']> {
    const batchId = coat.batchId.split('>')[0] ?? batchOfHistory(coat.batchId);
    return { batchId, name: facts().batches.get(batchId)?.name ?? '' };
  }

  return { coat: assessed, words, solventQuestion: minded.solventQuestion };
}
