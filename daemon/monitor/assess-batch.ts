import type { Batch, BatchSummary } from '../contract/batch.ts';
import type { TouchTest } from '../contract/coat.ts';
import { toMoment } from '../contract/moment.ts';
import type { BoardsProbed } from '../contract/wood-probe.ts';
import { handReadingReply, moveReply, remarkReply, timberReply } from '../rules/fact-reply.ts';
import type { BatchFact, MoveFact, TouchTestFact } from '../rules/facts.ts';
import { timberCautions } from '../rules/timber-cautions.ts';
import { nothingSaidOfTimber } from '../rules/trade-facts.ts';
import { type CoatParts, coatAssessor } from './assess-coat.ts';
import { testsOfCoat } from './site-facts.ts';

interface AssessParts extends CoatParts {
  /** What pins in the boards at a place tell; null where there are none. */
  woodAt: (placeId: string, now: number) => BoardsProbed | null;
  isSettling: () => boolean;
}

/** Batches and coats as the outside sees them: what was recorded, and what is made of it now. */
export function batchAssessor(parts: AssessParts) {
  const { facts, cures, trade, isSettling } = parts;
  const { coat, words, solventQuestion } = coatAssessor(parts);

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
      learnedBy: fact.learnedBy ?? 'touch',
      degreeHours: of ? cures.degreeHoursAt(of, fact.at) : 0,
    };
  }

  const move = (fact: MoveFact) =>
    moveReply(
      fact,
      facts().places.get(fact.placeId)?.kind === 'wall'
        ? (facts().mountingTicks.get(fact.id) ?? [])
        : null,
    );

  function batch(fact: BatchFact, now: number): Batch {
    const { batches, plans, coats, moves, remarks, handReadings, splits, merges } = facts();
    const plan = plans.get(fact.planId);
    if (!plan) throw new Error(`The batch ${fact.id} has no coating plan.`);
    const ofBatch = coats.get(fact.id) ?? [];
    const shown = summary(fact, now);
    const { weatheredAfterDays } = trade.rules;
    const timber = fact.timber ?? nothingSaidOfTimber;
    return {
      ...shown,
      plan: trade.plan(plan),
      coats: ofBatch.map((one) => coat(one, now)),
      moves: (moves.get(fact.id) ?? []).map(move),
      tests: ofBatch.flatMap((one) => testsOfCoat(facts(), one)).map(touchTest),
      remarks: (remarks.get(fact.id) ?? []).map(remarkReply),
      handReadings: handReadings.filter((one) => one.batchId === fact.id).map(handReadingReply),
      splits: splits
        .filter((one) => one.batchId === fact.id)
        .map(({ childId, boards, at }) => ({ childId, boards, at: toMoment(at) })),
      merges: merges
        .filter((one) => one.batchId === fact.id)
        .flatMap(({ mergedId, at }) => {
          const merged = batches.get(mergedId);
          if (!merged) return [];
          return [{ batchId: mergedId, boards: merged.boards.count, at: toMoment(at) }];
        }),
      cautions: [
        ...timberCautions(timber, ofBatch.length > 0, now, weatheredAfterDays),
        ...trade.warningsAt(shown.placeId, now),
      ],
      wood: shown.closed ? null : parts.woodAt(shown.placeId, now),
      recomputing: isSettling(),
    };
  }

  function summary(fact: BatchFact, now: number): BatchSummary {
    const lies = trade.lies(fact.id, now);
    const split = facts().splits.find((one) => one.childId === fact.id);
    const merge = facts().merges.find((one) => one.mergedId === fact.id);
    return {
      id: fact.id,
      name: fact.name,
      placeId: lies.placeId,
      species: fact.species,
      surface: fact.surface,
      boards: fact.boards,
      planId: fact.planId,
      closed: fact.closedAt !== null,
      createdAt: toMoment(fact.createdAt),
      timber: timberReply(fact.timber),
      lies,
      splitFrom: split ? { batchId: split.batchId, at: toMoment(split.at) } : null,
      mergedInto: merge ? { batchId: merge.batchId, at: toMoment(merge.at) } : null,
    };
  }

  return { batch, summary, coat, words, touchTest, move, solventQuestion };
}
export type BatchAssessor = ReturnType<typeof batchAssessor>;
