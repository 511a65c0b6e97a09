/** Nodes and weights of the five-point rule on −1…1. **Source:** Abramowitz and Stegun 1964, table 25.4, n = 5. */
const NODES: readonly (readonly [number, number])[] = [
  [0, 0.568888888888889],
  [-0.538469310105683, 0.478628670499366],
  [0.538469310105683, 0.478628670499366],
  [-0.906179845938664, 0.236926885056189],
  [0.906179845938664, 0.236926885056189],
];

/**
 * Mean of a smooth function over an interval by the five-point Gauss–Legendre rule in equal panels.
 *
 * @param value - the function; exact for polynomials up to degree 9 in each panel
 * @param from - start of the interval
 * @param to - its end, may equal or precede the start
 * @param panels - number of equal panels, 1 or more
 * @returns the mean value
 */
export function meanOver(
  value: (x: number) => number,
  from: number,
  to: number,
  panels: number,
): number {
  const half = (to - from) / (2 * panels);
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + (2 * panel + 1) * half;
    for (const [node, weight] of NODES) sum += weight * value(middle + node * half);
  }
  return sum / (2 * panels);
}
