import { type Gate, gates } from '../contract/gate.ts';
import { curedUntil, placeOfBatch } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import { gateNeeds } from '../rules/gate-need.ts';
import type { CoatRecord, TestRecord } from '../rules/season-summary.ts';
import { probabilityReached, quantileReached } from '../science/touch.ts';
import type { CoatCures } from './coat-cure.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import { batchOfCoat, boardsCoated, type SiteFacts, staysOfCoat } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

interface HistoryParts {
  facts: () => SiteFacts;
  cures: CoatCures;
  knowledge: CoatKnowledge;
  trade: TradeView;
  boardSpread: number;
}

/** What became of coats: when each job was possible, and what the model had thought of the tests. */
export function coatHistory(parts: HistoryParts) {
  const { facts, cures, knowledge, trade } = parts;
  /** When a coat’s sum reached what a job needs; to the hour, and null if it never did. */
  function reachedAt(coat: CoatFact, needed: number, untilAt: number): number | null {
    if (cures.degreeHoursAt(coat, untilAt) < needed) return null;
    let [before, after] = [coat.finishedAt, untilAt];
    while (after - before > hourMs) {
      const middle = Math.floor((before + after) / 2);
      if (cures.degreeHoursAt(coat, middle) < needed) before = middle;
      else after = middle;
    }
    return after;
  }

  function endOf(coat: CoatFact, now: number): number {
    const { coats } = facts();
    const next = curedUntil(coat, coats.get(coat.batchId) ?? []);
    const closedAt = batchOfCoat(facts(), coat)?.closedAt ?? null;
    return Math.max(coat.finishedAt, Math.min(next ?? now, closedAt ?? now, now));
  }

  function reached(coat: CoatFact, now: number): Record<Gate, number | null> {
    const { requirement } = knowledge.requirementFor(coat);
    const film = knowledge.filmOf(coat);
    const middle = quantileReached(requirement, 0.5, { boardSpread: parts.boardSpread }) * film;
    const untilAt = endOf(coat, now);
    return Object.fromEntries(
      gates.map((gate) => [gate, reachedAt(coat, middle * gateNeeds[gate].multiple, untilAt)]),
    ) as Record<Gate, number | null>;
  }

  function tests(coat: CoatFact): TestRecord[] {
    const { requirement } = knowledge.requirementFor(coat);
    const film = knowledge.filmOf(coat);
    return knowledge.testsOf(coat).map(({ gate, passed, at, degreeHours }) => ({
      at,
      gate,
      passed,
      probability: probabilityReached(
        requirement,
        degreeHours / (gateNeeds[gate].multiple * film),
        { boardSpread: parts.boardSpread },
      ),
    }));
  }

  return {
    reached,
    endOf,
    /** Where a coat lay while it cured, following its batch. */
    stays: (coat: CoatFact) => staysOfCoat(facts(), coat),
    record(coat: CoatFact, now: number): CoatRecord | null {
      const { moves } = facts();
      const boards = boardsCoated(facts(), coat);
      const placeId = placeOfBatch(moves.get(coat.batchId) ?? [], coat.finishedAt);
      if (!boards || placeId === null) return null;
      return {
        coatId: coat.id,
        batchId: coat.batchId,
        finishedAt: coat.finishedAt,
        placeId,
        reachedAt: reached(coat, now),
        tests: tests(coat),
        boards: boards.count,
        areaM2: trade.areaOf(coat) ?? 0,
        usedL: coat.usedL,
      };
    },
  };
}
export type CoatHistory = ReturnType<typeof coatHistory>;
