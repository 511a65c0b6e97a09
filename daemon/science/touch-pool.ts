import { type Grid, type Interval, lnLikelihood } from './touch-grid.ts';

/** Tests that share one mixture and one place. */
export type PlaceTests = readonly Interval[];

/** All tests, as seen from the coat asked about. */
export type PooledTests = {
  /** of its mixture at its place */
  readonly own: PlaceTests;
  /** of its mixture, place by place */
  readonly otherPlaces: readonly PlaceTests[];
  /** of each other mixture, place by place */
  readonly otherMixtures: readonly (readonly PlaceTests[])[];
};

/** How far a place's mean lies from its mixture's, in units; heavy-tailed, so that one odd rack is believed to be odd. Assumption. */
const PLACE_SCALE = 0.4;
/** How far a mixture's mean lies from that of all mixtures, in units; a primer thins its driers. Assumption. */
const MIXTURE_SCALE = 1.2;
const FREEDOM = 3;

/** A likelihood per cell, scaled so that its largest value is 1. */
type Message = Float64Array;

function scaled(ln: Float64Array): Message {
  const best = ln.reduce((a, b) => Math.max(a, b));
  return ln.map((value) => Math.exp(value - best));
}

function product(messages: readonly Message[], cells: number): Message {
  const all = new Float64Array(cells).fill(1);
  for (const message of messages) {
    let largest = 0;
    for (let cell = 0; cell < cells; cell++) {
      const value = (all[cell] as number) * (message[cell] as number);
      all[cell] = value;
      if (value > largest) largest = value;
    }
    for (let cell = 0; cell < cells; cell++) all[cell] = (all[cell] as number) / largest;
  }
  return all;
}

/** What a likelihood of one mean says of another mean that lies a Student-t distance away. */
function acrossBy(grid: Grid, scale: number): (message: Message) => Message {
  const count = grid.mu.length;
  const columns = grid.sigma.length;
  const share = new Float64Array(count * count);
  grid.mu.forEach((to, i) => {
    let total = 0;
    grid.mu.forEach((from, k) => {
      const apart = (to - from) / scale;
      const density = (1 + (apart * apart) / FREEDOM) ** (-(FREEDOM + 1) / 2);
      share[i * count + k] = density * (grid.step[k] as number);
      total += share[i * count + k] as number;
    });
    for (let k = 0; k < count; k++) share[i * count + k] = (share[i * count + k] as number) / total;
  });
  return (message) => {
    const moved = new Float64Array(message.length);
    for (let i = 0; i < count; i++) {
      for (let k = 0; k < count; k++) {
        const part = share[i * count + k] as number;
        for (let j = 0; j < columns; j++) {
          const cell = i * columns + j;
          moved[cell] = (moved[cell] as number) + part * (message[k * columns + j] as number);
        }
      }
    }
    return moved;
  };
}

/**
 * ln likelihood of all tests for the coat asked about: its own in full, the others as far as a place
 * and a mixture resemble each other.
 *
 * @param tests - the tests, grouped
 * @param grid - a grid that covers them all
 * @returns one figure per cell
 *
 * **Source:** partial pooling, a tree of means (place, mixture, all) with Student-t steps, summed from
 * the leaves to the place asked about; the steps are assumptions. Coats spread alike in all groups.
 */
export function pooledLnLikelihood(tests: PooledTests, grid: Grid): Float64Array {
  const own = lnLikelihood(tests.own, grid);
  if (tests.otherPlaces.length === 0 && tests.otherMixtures.length === 0) return own;
  const toPlace = acrossBy(grid, PLACE_SCALE);
  const mixtureMean = (places: readonly PlaceTests[]): Message =>
    product(
      places.map((place) => toPlace(scaled(lnLikelihood(place, grid)))),
      own.length,
    );
  const mixtures: Message[] = [mixtureMean(tests.otherPlaces)];
  if (tests.otherMixtures.length > 0) {
    const toMixture = acrossBy(grid, MIXTURE_SCALE);
    const others = tests.otherMixtures.map((places) => toMixture(mixtureMean(places)));
    mixtures.push(toMixture(product(others, own.length)));
  }
  const fromElsewhere = toPlace(product(mixtures, own.length));
  return own.map((ln, cell) => ln + Math.log(fromElsewhere[cell] as number));
}
