import type { PlannedCoat, PlanUse, Surface } from '../contract/plan.ts';
import { sentence } from '../wording/english.ts';

const coatNames = {
  primer: sentence('coat-name/primer', {}),
  second: sentence('coat-name/second', {}),
  last: sentence('coat-name/last', {}),
};

/** A plan that every site starts with. */
export interface DefaultPlan {
  name: string;
  surface: Surface;
  use: PlanUse;
  coats: PlannedCoat[];
}

/**
 * Spreading rates to begin with, m²/L: primer, second, last coat.
 * **Source:** common practice, no source. Rough sawn timber drinks more than planed.
 */
const spreadingM2PerL: Record<Surface, [number, number, number]> = {
  sawn: [8, 10, 12],
  planed: [12, 14, 16],
};

/** Parts of paint, raw linseed oil and turpentine of a primer and a second coat. */
type Parts = readonly [paint: number, rawLinseedOil: number, turpentine: number];

/**
 * Primer and second coat of each plan; the last coat is undiluted.
 *
 * - usual: a primer thinned with oil and turpentine, a second coat with turpentine added to the paint;
 * - without turpentine: a primer thinned with raw oil alone, brushed out longer, the next undiluted;
 * - resinous or tannin-rich timber: little raw oil, since it stays sticky on dense wood, and more
 *   turpentine, which takes the primer in past the resin.
 *
 * **Source:** common practice, no source.
 */
const mixtures: Record<PlanUse, { primer: Parts; second: Parts }> = {
  usual: { primer: [35, 50, 15], second: [100, 0, 15] },
  'without-turpentine': { primer: [50, 50, 0], second: [100, 0, 0] },
  resinous: { primer: [50, 20, 30], second: [100, 0, 10] },
};

const parts = ([paint, rawLinseedOil, turpentine]: Parts) => ({ paint, rawLinseedOil, turpentine });

/**
 * Three coats of linseed-oil paint on bare cladding: a primer all round, later coats on what shows.
 * **Source:** common practice, no source.
 */
function threeCoats(surface: Surface, use: PlanUse): PlannedCoat[] {
  const [primer, second, last] = spreadingM2PerL[surface];
  return [
    {
      name: coatNames.primer.text,
      mixture: parts(mixtures[use].primer),
      faces: ['face', 'back', 'edges', 'ends'],
      spreadingM2PerL: primer,
      soaksIn: true,
    },
    {
      name: coatNames.second.text,
      mixture: parts(mixtures[use].second),
      faces: ['face', 'edges'],
      spreadingM2PerL: second,
      soaksIn: false,
    },
    {
      name: coatNames.last.text,
      mixture: { paint: 100, rawLinseedOil: 0, turpentine: 0 },
      faces: ['face', 'edges'],
      spreadingM2PerL: last,
      soaksIn: false,
    },
  ];
}

const plansFor = (use: PlanUse): DefaultPlan[] =>
  (['sawn', 'planed'] as const).map((surface) => ({
    name: sentence(`plan-name/${use}`, { surface }).text,
    surface,
    use,
    coats: threeCoats(surface, use),
  }));

/** The plans that a batch goes by when nobody chose another, one for each surface. */
export const defaultPlans: readonly DefaultPlan[] = plansFor('usual');

/** Plans to choose where the usual ones do not fit. */
export const furtherPlans: readonly DefaultPlan[] = [
  ...plansFor('without-turpentine'),
  ...plansFor('resinous'),
];

/** The plans that come with the program and are not there yet. */
export function missingPlans(
  known: readonly { use?: PlanUse | null; surface: Surface }[],
): (DefaultPlan & { isDefault: boolean })[] {
  return [...defaultPlans, ...furtherPlans]
    .filter(({ use, surface }) => !known.some((one) => one.use === use && one.surface === surface))
    .map((plan) => ({ ...plan, isDefault: plan.use === 'usual' }));
}
