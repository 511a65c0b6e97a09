import { placeOfBatch } from '../rules/batch.ts';
import type { CoatFact } from '../rules/facts.ts';
import { filmFactor } from '../rules/film.ts';
import { type FeltTest, learnedFrom, mixtureKey } from '../rules/touch-knowledge.ts';
import { boardArea } from '../science/paint.ts';
import { fitRequirement, type Requirement, type TouchPrior } from '../science/touch.ts';
import type { CoatCures } from './coat-cure.ts';
import type { SiteFacts } from './site-facts.ts';

interface KnowledgeParts {
  facts: () => SiteFacts;
  cures: CoatCures;
  prior: TouchPrior;
}

/** How many fits are kept; a site has a few paints at a few places. */
const keptFits = 200;

/** What touch tests taught about coats, by mixture and colour first, by place second. */
export function coatKnowledge({ facts, cures, prior }: KnowledgeParts) {
  const fits = new Map<string, Requirement>();

  function filmOf(coat: CoatFact): number {
    const { batches, plans } = facts();
    const batch = batches.get(coat.batchId);
    const planned = batch ? plans.get(batch.planId)?.coats[coat.coat] : undefined;
    if (!batch || !planned) return 1;
    const areaM2 = boardArea({ ...batch.boards, faces: coat.faces });
    return filmFactor(planned.soaksIn, areaM2, coat.usedL, planned.spreadingM2PerL);
  }

  function keyOf(coat: CoatFact): { mixture: string; place: string } {
    const moves = facts().moves.get(coat.batchId) ?? [];
    return {
      mixture: mixtureKey(coat.mixture, coat.colour),
      place: placeOfBatch(moves, coat.finishedAt) ?? '',
    };
  }

  function testsOf(coat: CoatFact): FeltTest[] {
    return (facts().tests.get(coat.id) ?? []).map((test) => ({
      gate: test.gate,
      passed: test.passed,
      at: test.at,
      degreeHours: cures.degreeHoursAt(coat, test.at),
    }));
  }

  return {
    filmOf,
    testsOf,
    /**
     * What recoating needs, learned from the other coats: those of this paint at this place first,
     * others pooled in part. The coat’s own tests come on top of it.
     */
    requirementFor(coat: CoatFact): { requirement: Requirement; learnedFrom: number } {
      const { coats, tests } = facts();
      const target = keyOf(coat);
      const felt = [...coats.values()].flat().flatMap((other) => {
        if (other.id === coat.id || !tests.has(other.id)) return [];
        const interval = learnedFrom(testsOf(other), filmOf(other));
        return interval === null ? [] : [{ ...interval, ...keyOf(other) }];
      });
      const cacheKey = JSON.stringify([target, felt]);
      let requirement = fits.get(cacheKey);
      if (!requirement) {
        requirement = fitRequirement(felt, prior, target);
        if (fits.size >= keptFits) fits.clear();
        fits.set(cacheKey, requirement);
      }
      const ofThisPaint = felt.filter((one) => one.mixture === target.mixture).length;
      return { requirement, learnedFrom: ofThisPaint };
    },
  };
}
export type CoatKnowledge = ReturnType<typeof coatKnowledge>;
