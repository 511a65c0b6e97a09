import type { Boards } from '../contract/batch.ts';
import { BoardcureError } from '../contract/problem.ts';
import type { BatchAhead, RecoatNeed } from '../rules/ahead/batch-chain.ts';
import { coatedArea } from '../rules/coated-area.ts';
import type { BatchFact, CoatFact, PlaceFact, PlanFact } from '../rules/facts.ts';
import { degreeHoursPerEquivalentHour } from '../science/cure-rate.ts';
import { quantileReached } from '../science/touch.ts';
import { sentence } from '../wording/english.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import type { ModelPair } from './hour-book.ts';
import type { SiteFacts } from './site-facts.ts';

/** Boards that are not recorded yet; what is left out is as with the newest batch. */
export interface BoardsAsked {
  boards: number;
  lengthMm?: number | undefined;
  widthMm?: number | undefined;
  thicknessMm?: number | undefined;
  planId?: string | undefined;
}

export interface NamedBatch {
  name: string;
  isRecorded: boolean;
  coatNames: string[];
  batch: BatchAhead;
}

interface AheadBatchParts {
  facts: () => SiteFacts;
  assess: BatchAssessor;
  knowledge: CoatKnowledge;
  models: ModelPair;
  boardSpread: number;
}

/** The batches that have work before them, and the boards that someone asks about. */
export function aheadBatches(parts: AheadBatchParts) {
  const { facts, assess, knowledge, models } = parts;
  const perHour = degreeHoursPerEquivalentHour(models.ruling.model);

  /** What recoating will need after a coat that is not on yet. */
  function needOf(batchId: string, plan: PlanFact, coat: number, now: number): RecoatNeed {
    const planned = plan.coats[coat];
    if (!planned) throw new Error(`The plan ${plan.id} has no coat ${coat}.`);
    const { requirement } = knowledge.requirementFor({
      id: '',
      batchId,
      coat,
      begunAt: null,
      finishedAt: now,
      mixture: planned.mixture,
      faces: planned.faces,
      usedL: null,
      colour: null,
      tin: null,
    });
    const at = (probability: number) =>
      quantileReached(requirement, probability, { boardSpread: parts.boardSpread }) / perHour;
    return { p10: at(0.1), p90: at(0.9) };
  }

  /** What it needs that is on, as its verdict has it; with what it gathered. */
  function cureOf(fact: CoatFact, now: number) {
    const coat = assess.coat(fact, now);
    const { early, late } = coat.gates.recoat.requiredDegreeHours;
    const isThere = coat.gates.recoat.verdict === 'ready' || coat.gates.recoat.verdict === 'hold';
    const need = { p10: early / perHour, p90: late / perHour };
    const gathered = isThere ? Number.MAX_VALUE : coat.degreeHours / perHour;
    return { need, gathered };
  }

  function ahead(
    batchId: string,
    boards: Boards,
    plan: PlanFact,
    coats: readonly CoatFact[],
    lies: PlaceFact | null,
    now: number,
  ): BatchAhead | null {
    const last = coats.at(-1) ?? null;
    const places = [...facts().places.values()];
    const firstOf = (...kinds: PlaceFact['kind'][]) =>
      kinds.map((kind) => places.find((place) => place.kind === kind)).find((place) => place) ??
      null;
    const isIndoors = lies?.kind === 'rack' || lies?.kind === 'room';
    const rack = (isIndoors ? lies : firstOf('rack', 'room')) ?? lies ?? places[0] ?? null;
    if (rack === null) return null;
    const cured = last ? cureOf(last, now) : null;
    return {
      batchId,
      boards: boards.count,
      rackM: (boards.count * boards.lengthMm) / 1000,
      areaM2: plan.coats.map((coat) => coatedArea(boards, coat.faces, coat.coverWidthMm)),
      recoatNeeds: plan.coats.map((_, coat) =>
        cured && coat === last?.coat ? cured.need : needOf(batchId, plan, coat, now),
      ),
      nextCoat: last ? last.coat + 1 : 0,
      gathered: cured?.gathered ?? null,
      placeId: lies?.id ?? rack.id,
      isOnRack: last !== null && isIndoors,
      rackPlaceId: rack.id,
      wallPlaceId: lies?.kind === 'wall' ? lies.id : (firstOf('wall')?.id ?? null),
      isUp: lies?.kind === 'wall',
    };
  }

  return (asked: BoardsAsked | null, now: number): NamedBatch[] => {
    const { batches, plans, coats, places } = facts();
    const open = [...batches.values()].filter((batch) => batch.closedAt === null);
    const named = open.flatMap((batch): NamedBatch[] => {
      const plan = plans.get(batch.planId);
      const lies = places.get(assess.summary(batch, now).placeId) ?? null;
      const found =
        plan &&
        ahead(
          batch.id,
          assess.summary(batch, now).boards,
          plan,
          coats.get(batch.id) ?? [],
          lies,
          now,
        );
      if (!found) return [];
      const coatNames = plan.coats.map((coat) => coat.name);
      return [{ name: batch.name, isRecorded: true, coatNames, batch: found }];
    });
    return asked === null ? named : [...named, ofAsked(asked, newest([...batches.values()]), now)];
  };

  function ofAsked(asked: BoardsAsked, like: BatchFact | null, now: number): NamedBatch {
    const { plans } = facts();
    const plan =
      asked.planId !== undefined
        ? plans.get(asked.planId)
        : like
          ? plans.get(like.planId)
          : [...plans.values()][0];
    if (!plan) {
      throw new BoardcureError(
        'BC_REFERENCE_UNKNOWN',
        sentence('no-such-thing', { thing: 'coating-plan', id: asked.planId ?? '' }),
        { pointer: '/planId' },
      );
    }
    const size = (field: 'lengthMm' | 'widthMm' | 'thicknessMm') => {
      const value = asked[field] ?? like?.boards[field];
      if (value === undefined) {
        throw new BoardcureError('BC_REQUEST_INVALID', sentence('no-batch-like-it', { field }), {
          pointer: `/${field}`,
        });
      }
      return value;
    };
    const boards: Boards = {
      count: asked.boards,
      lengthMm: size('lengthMm'),
      widthMm: size('widthMm'),
      thicknessMm: size('thicknessMm'),
    };
    const found = ahead('', boards, plan, [], null, now);
    if (!found) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('no-place-to-coat', {}));
    }
    return {
      name: '',
      isRecorded: false,
      coatNames: plan.coats.map((coat) => coat.name),
      batch: found,
    };
  }
}
export type AheadBatches = ReturnType<typeof aheadBatches>;

function newest(batches: readonly BatchFact[]): BatchFact | null {
  return batches.reduce<BatchFact | null>(
    (a, b) => (a === null || b.createdAt >= a.createdAt ? b : a),
    null,
  );
}
