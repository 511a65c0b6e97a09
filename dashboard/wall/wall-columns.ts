/** Up to so many boards lie over the whole width. */
const ONE_COLUMN = 5;
const TWO_COLUMNS = 12;

/**
 * In how many columns the boards lie on a wide screen.
 *
 * @param boards - 1 or more
 */
export function columnsFor(boards: number): 1 | 2 | 3 {
  if (boards <= ONE_COLUMN) return 1;
  return boards <= TWO_COLUMNS ? 2 : 3;
}
