import { placeOfBatch } from '../rules/batch.ts';
import { coatedArea } from '../rules/coated-area.ts';
import type { CoatFact, TouchTestFact } from '../rules/facts.ts';
import { filmFactor } from '../rules/film.ts';
import { type FeltTest, learnedFrom, mixtureKey } from '../rules/touch-knowledge.ts';
import { fitRequirement, type Requirement, type TouchPrior } from '../science/touch.ts';
import type { CoatCures } from './coat-cure.ts';
import { boardsCoated, plannedCoatOf, type SiteFacts, testsOfCoat } from './site-facts.ts';

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
    const planned = plannedCoatOf(facts(), coat);
    const boards = boardsCoated(facts(), coat);
    if (!boards || !planned) return 1;
    const areaM2 = coatedArea(boards, coat.faces, planned.coverWidthMm);
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
    return feltAt(coat, testsOfCoat(facts(), coat));
  }

  /** Only what was felt on these boards by themselves: what a split batch shares speaks once. */
  function ownTestsOf(coat: CoatFact): FeltTest[] {
    const own = testsOfCoat(facts(), coat).filter((test) => test.batchId === coat.batchId);
    return feltAt(coat, own);
  }

  function feltAt(coat: CoatFact, tests: readonly TouchTestFact[]): FeltTest[] {
    return tests.map(({ gate, passed, at }) => ({
      gate,
      passed,
      at,
      degreeHours: cures.degreeHoursAt(coat, at),
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
      const { coats } = facts();
      const target = keyOf(coat);
      const felt = [...coats.values()].flat().flatMap((other) => {
        if (other.id === coat.id) return [];
        const own = ownTestsOf(other);
        if (own.length === 0) return [];
        const interval = learnedFrom(own, filmOf(other));
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
