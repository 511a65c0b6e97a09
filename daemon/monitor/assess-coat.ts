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
import { curedUntil, cureStays, placeOfBatch } from '../rules/batch.ts';
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
import { localTime } from '../rules/local-time.ts';
import { airSources } from '../rules/place.ts';
import { isColdSeason, recoatWindow } from '../rules/recoat-window.ts';
import { wetHolds } from '../rules/remark-cure.ts';
import { type SolventQuestion, solventCautions } from '../rules/solvent-air.ts';
import { stageOf } from '../rules/stage.ts';
import { ownTests } from '../rules/touch-knowledge.ts';
import { wallReasons } from '../rules/wall-sun.ts';
import type { AirChange } from '../science/airflow.ts';
import { sentence } from '../wording/english.ts';
import type { CoatCure, CoatCures } from './coat-cure.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceNow } from './place-now.ts';
import type { SensorDoubts } from './sensor-trust.ts';
import { batchOfCoat, plannedCoatOf, type SiteFacts } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

export interface CoatParts {
  facts: () => SiteFacts;
  cures: CoatCures;
  knowledge: CoatKnowledge;
  placeNow: PlaceNow;
  models: ModelPair;
  limits: VerdictLimits;
  trade: TradeView;
  doubts: SensorDoubts;
  airflowAt: (placeId: string, now: number) => AirVerdict;
  airChangeAt: (placeId: string, now: number) => AirChange | null;
  /** Exposure limit of the local rules, ppm; null for the lowest published one. */
  localLimitPpm(): number | null;
}

/** Coats as the outside sees them: what was recorded, and what is made of it now. */
export function coatAssessor(parts: CoatParts) {
  const { facts, cures, knowledge, placeNow, models, limits, trade } = parts;
  const { rate } = models.ruling.model;
  const { timeZone } = trade.rules;

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
      cautions: isLast ? cautionsAbout(fact, placeId, now) : [],
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
          ...(brush ? [...outdoorReasons(placeId, now), ...standingReasons(fact, now)] : []),
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

  /** What to mind at a wall when the next coat goes on. */
  function outdoorReasons(placeId: string, now: number): Reason[] {
    const place = facts().places.get(placeId);
    if (place?.kind !== 'wall') return [];
    return wallReasons(place, localTime(now, timeZone).minute / 60, trade.rules.hemisphere);
  }

  /** What to do first on a coat that has stood in the weather. */
  function standingReasons(fact: CoatFact, now: number): Reason[] {
    const { coats, moves, places } = facts();
    const stays = cureStays(
      fact,
      coats.get(fact.batchId) ?? [],
      moves.get(fact.batchId) ?? [],
      null,
    ).flatMap(({ placeId, fromAt, toAt }) => {
      const kind = places.get(placeId)?.kind;
      return kind ? [{ kind, fromAt, toAt: toAt ?? now }] : [];
    });
    return recoatWindow(stays, (at) => isColdSeason(at, timeZone, trade.rules.hemisphere));
  }

  function cautionsAbout(fact: CoatFact, placeId: string | null, now: number): Reason[] {
    const question = placeId === null ? null : solventQuestion(fact, placeId, now)?.question;
    return question ? solventCautions(question) : [];
  }

  /** What a coat’s solvent is about, and the room it leaves into; null where that is not known. */
  function solventQuestion(fact: CoatFact, placeId: string, now: number) {
    const { places } = facts();
    const planned = plannedCoatOf(facts(), fact);
    const areaM2 = trade.areaOf(fact);
    if (areaM2 === null || !planned) return null;
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

  return { coat: assessed, words, solventQuestion };
}

function isSlower(one: Coat, other: Coat): boolean {
  const [a, b] = [one.gates.recoat.probability, other.gates.recoat.probability];
  return a < b || (a === b && one.degreeHours < other.degreeHours);
}

/** A coat of boards that were put together: what was recorded of it, and the verdict of the slower. */
function speakingFor(own: Coat, slower: Coat, speaksFor: NonNullable<Coat['speaksFor']>): Coat {
  const reason = sentence('slower-boards', { batchName: speaksFor.name });
  const { id, usedL, colour, tin, tinId, planId, areaM2, spreadingM2PerL, inherited } = own;
  return {
    ...slower,
    ...{ id, usedL, colour, tin, tinId, planId, areaM2, spreadingM2PerL, inherited, speaksFor },
    gates: Object.fromEntries(
      gates.map((gate) => {
        const verdict = slower.gates[gate];
        return [gate, { ...verdict, reasons: [...verdict.reasons, reason] }];
      }),
    ) as Coat['gates'],
  };
}
