/** How long and high the drawn piece of board is, in its own units. */
export const BOARD_LENGTH = 1000;
export const BOARD_HEIGHT = 100;

const LINES = 9;
const POINTS = 44;

export interface Knot {
  readonly x: number;
  readonly y: number;
  readonly rx: number;
  readonly ry: number;
}

export interface Grain {
  /** One SVG path of all lines of the grain, from edge to edge: a wall draws dozens, each a node less. */
  readonly lines: string;
  readonly knots: readonly Knot[];
}

/**
 * Chance that is the same every time for the same text: each batch keeps its board.
 *
 * @param text - usually the id of a batch
 * @returns a function yielding numbers from 0 up to, but not including, 1
 */
export function chanceOf(text: string): () => number {
  // FNV-1a over the text, then a mulberry32 step a call: both in the public domain, from memory.
  let state = 2166136261;
  for (let i = 0; i < text.length; i += 1) {
    state = Math.imul(state ^ text.charCodeAt(i), 16777619);
  }
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * The grain and the knots of a batch’s board.
 *
 * @param seed - usually the id of the batch
 * @returns paths in a box of `BOARD_LENGTH` by `BOARD_HEIGHT`
 */
export function grainOf(seed: string): Grain {
  const chance = chanceOf(seed);
  const knots = Array.from({ length: Math.floor(chance() * 3) }, () => ({
    x: 80 + chance() * (BOARD_LENGTH - 160),
    y: 25 + chance() * 50,
    rx: 7 + chance() * 6,
    ry: 8 + chance() * 9,
  }));
  const slow = 0.6 + chance() * 1.2;
  const phase = chance() * Math.PI * 2;
  const lines = Array.from({ length: LINES }, (_, index) => {
    const rest = ((index + 0.3 + chance() * 0.4) / LINES) * BOARD_HEIGHT;
    const swing = 2 + chance() * 3;
    return linePath((x) => {
      const along = (x / BOARD_LENGTH) * Math.PI * 2;
      return rest + swing * Math.sin(along * slow + phase) + aroundKnots(knots, x, rest);
    });
  });
  return { lines: lines.join(''), knots };
}

/** Grain flows around a knot, the more the nearer it passes. */
function aroundKnots(knots: readonly Knot[], x: number, y: number): number {
  let shift = 0;
  for (const knot of knots) {
    const along = (x - knot.x) / (knot.rx * 3.2);
    const across = Math.abs(y - knot.y) / (knot.ry * 2.4);
    const side = y < knot.y ? -1 : 1;
    shift += side * (knot.ry + 4) * Math.exp(-along * along) * Math.exp(-across);
  }
  return shift;
}

/** A smooth line: each sampled height bends it, and it passes midway between them. */
function linePath(heightAt: (x: number) => number): string {
  const step = BOARD_LENGTH / POINTS;
  let path = `M0 ${round(heightAt(0))}`;
  let y = heightAt(step);
  for (let i = 1; i < POINTS; i += 1) {
    const next = heightAt((i + 1) * step);
    path += `Q${round(i * step)} ${round(y)} ${round((i + 0.5) * step)} ${round((y + next) / 2)}`;
    y = next;
  }
  return `${path}L${BOARD_LENGTH} ${round(y)}`;
}

/**
 * The brushed edge of the paint: a path that fills from its left side to bristle marks on the right.
 *
 * @param seed - usually the id of the batch
 * @returns a path in a box 20 wide and `BOARD_HEIGHT` high
 */
export function brushEdge(seed: string): string {
  const chance = chanceOf(`${seed} brush`);
  const bristles = 11;
  let path = 'M0 0';
  for (let i = 0; i <= bristles; i += 1) {
    const y = (i / bristles) * BOARD_HEIGHT;
    const reach = 4 + chance() * 15;
    path += `L${round(reach)} ${round(y)}`;
    if (i < bristles) path += `L${round(reach * (0.3 + chance() * 0.4))} ${round(y + 5)}`;
  }
  return `${path}L0 ${BOARD_HEIGHT}Z`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
