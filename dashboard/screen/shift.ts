/** How far the page is moved at most, px each way; `wall.css` leaves that much around it. */
export const SHIFT_PX = 4;
/** It moves by a pixel so seldom that nobody sees it, ms. */
const STEP_MS = 10 * 60_000;

/**
 * Where the page stands at a moment, so that no edge burns into a screen that never changes. The ways to and
 * fro differ in length, so that all places are come by.
 *
 * @param now - epoch ms
 * @returns whole px, from minus to plus `SHIFT_PX`
 */
export function shiftAt(now: number): { readonly x: number; readonly y: number } {
  const step = Math.floor(now / STEP_MS);
  return { x: toAndFro(step, SHIFT_PX), y: toAndFro(step, SHIFT_PX - 1) };
}

/** −reach … reach … −reach, one at a time. */
function toAndFro(step: number, reach: number): number {
  const way = ((step % (4 * reach)) + 4 * reach) % (4 * reach);
  return way <= 2 * reach ? way - reach : 3 * reach - way;
}
