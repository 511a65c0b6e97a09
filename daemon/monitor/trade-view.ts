import type { Lies } from '../contract/batch.ts';
import type { Coating } from '../contract/coating.ts';
import type { Reason } from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import type { Plan } from '../contract/plan.ts';
import type { Tin } from '../contract/tin.ts';
import { believedPlace } from '../rules/batch.ts';
import { coatedArea } from '../rules/coated-area.ts';
import { coatingReply } from '../rules/coating-steps.ts';
import { planReply, tinReply } from '../rules/fact-reply.ts';
import type { CoatFact, PlanFact } from '../rules/facts.ts';
import { newestOf, versionsOf } from '../rules/plan-family.ts';
import { capacityWarnings } from '../rules/rack-capacity.ts';
import { learnedSpreading } from '../rules/spreading-rate.ts';
import { tinDoubts } from '../rules/tin-age.ts';
import { mixtureKey } from '../rules/touch-knowledge.ts';
import type { CoatingFact, TinFact } from '../rules/trade-facts.ts';
import type { TradeRules } from '../rules/usual-trade.ts';
import { boardsCoated, plannedCoatOf, recordedCoats, type SiteFacts } from './site-facts.ts';

/** What the trade’s facts come to: places, tins, plans and what was learned of them. */
export function tradeView(facts: () => SiteFacts, rules: TradeRules) {
  /** Area that a coat covered, m²; null where its batch is gone. */
  function areaOf(coat: CoatFact): number | null {
    const boards = boardsCoated(facts(), coat);
    const planned = plannedCoatOf(facts(), coat);
    return boards ? coatedArea(boards, coat.faces, planned?.coverWidthMm) : null;
  }

  function learnedOf(plan: PlanFact): Plan['learned'] {
    const family = new Set(versionsOf(plan, facts().plans.values()).map(({ id }) => id));
    const coats = recordedCoats(facts()).filter((coat) => family.has(coat.planId ?? ''));
    return plan.coats.map((planned, index) => {
      const key = mixtureKey(planned.mixture, null);
      const used = coats.flatMap((coat) => {
        if (coat.coat !== index || mixtureKey(coat.mixture, null) !== key) return [];
        const areaM2 = areaOf(coat);
        return areaM2 === null || coat.usedL === null ? [] : [{ areaM2, usedL: coat.usedL }];
      });
      return learnedSpreading(planned.spreadingM2PerL, used);
    });
  }

  function doubtsAbout(coat: CoatFact): Reason[] {
    const tin = coat.tinId ? facts().tins.get(coat.tinId) : undefined;
    return tin ? tinDoubts(tin, coat.finishedAt, rules.tinOldAfterDays) : [];
  }

  /** Boards of the batches that lie at a place. */
  function lyingAt(placeId: string, now: number) {
    return [...facts().batches.values()]
      .filter(({ id, closedAt }) => {
        const moves = facts().moves.get(id) ?? [];
        return closedAt === null && believedPlace(moves, now)?.placeId === placeId;
      })
      .map((batch) => batch.boards);
  }

  return {
    rules,
    areaOf,
    recordedCoats: (): CoatFact[] => recordedCoats(facts()),
    doubtsAbout,
    plan(plan: PlanFact): Plan {
      const isNewest = newestOf(plan, facts().plans.values()).id === plan.id;
      return planReply(plan, { isNewest, learned: learnedOf(plan) });
    },
    tin(tin: TinFact, now: number): Tin {
      const used = recordedCoats(facts()).filter((coat) => coat.tinId === tin.id);
      const usedL = used.reduce((sum, coat) => sum + (coat.usedL ?? 0), 0);
      return tinReply(tin, usedL, tinDoubts(tin, now, rules.tinOldAfterDays));
    },
    /** Where a batch is believed to lie at a moment. */
    lies(batchId: string, at: number): Lies {
      const believed = believedPlace(facts().moves.get(batchId) ?? [], at);
      if (!believed) throw new Error(`The batch ${batchId} lies nowhere.`);
      const { placeId, since } = believed;
      const placeName = facts().places.get(placeId)?.name ?? '';
      return { placeId, placeName, since: toMoment(since) };
    },
    /** Whether more is said to lie at a place than it takes. */
    warningsAt(placeId: string, now: number): Reason[] {
      const place = facts().places.get(placeId);
      return place ? capacityWarnings(place, lyingAt(placeId, now)) : [];
    },
    coating(coating: CoatingFact): Coating {
      const { batches, plans, coats, coatingSteps, remarks } = facts();
      const coat =
        (coats.get(coating.batchId) ?? []).find((one) => one.id === coating.coatId) ?? null;
      const planId = coat?.planId ?? batches.get(coating.batchId)?.planId ?? '';
      return coatingReply(coating, {
        planned: plans.get(planId)?.coats[coating.coat],
        coat,
        steps: coatingSteps.get(coating.id) ?? [],
        remarks: remarks.get(coating.batchId) ?? [],
        times: rules.look,
      });
    },
  };
}
export type TradeView = ReturnType<typeof tradeView>;
