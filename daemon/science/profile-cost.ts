/** A cost over one parameter, smaller is better, and where it is least. */
export type Profile = { readonly cost: (x: number) => number; readonly best: number };

const TRIALS = 60;

/** Minimum of a function with one valley by golden section between two points. */
function valley(cost: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [costLeft, costRight] = [cost(left), cost(right)];
  while (high - low > 1e-4) {
    if (costLeft < costRight) {
      [high, right, costRight] = [right, left, costLeft];
      left = high - golden * (high - low);
      costLeft = cost(left);
    } else {
      [low, left, costLeft] = [left, right, costRight];
      right = low + golden * (high - low);
      costRight = cost(right);
    }
  }
  return (low + high) / 2;
}

/**
 * The deepest valley of a cost between two ends: even trials, then golden section.
 *
 * @param from - lower end of the parameter
 * @param to - upper end
 * @param cost - the cost
 * @returns the cost with its best point
 */
export function lowestValley(from: number, to: number, cost: (x: number) => number): Profile {
  const step = (to - from) / (TRIALS - 1);
  let [best, least] = [from, Number.POSITIVE_INFINITY];
  for (let trial = 0; trial < TRIALS; trial++) {
    const x = from + trial * step;
    const value = cost(x);
    if (value < least) [best, least] = [x, value];
  }
  return { cost, best: valley(cost, best - step, best + step) };
}

/**
 * Where the cost has risen to a limit on one side of its best point.
 *
 * @param found - the cost and its best point
 * @param limit - the cost looked for
 * @param end - how far to look, on either side of the best point
 * @returns the parameter, null where the limit is not reached before the end
 */
export function risenEdge(found: Profile, limit: number, end: number): number | null {
  let [inside, outside] = [found.best, found.best];
  const direction = Math.sign(end - found.best);
  while (found.cost(outside) <= limit) {
    inside = outside;
    outside += direction * 0.1;
    if ((outside - end) * direction > 0) return null;
  }
  while (Math.abs(outside - inside) > 1e-3) {
    const middle = (inside + outside) / 2;
    if (found.cost(middle) <= limit) inside = middle;
    else outside = middle;
  }
  return (inside + outside) / 2;
}
