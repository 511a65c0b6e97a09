import type { Quantity } from '../../contract/quantity.ts';
import { sentence } from '../../wording/english.ts';
import { end, type Finding, raise } from './finding.ts';

/**
 * What air and boards can be where people coat them; wider than any shed, narrower than what is taken
 * in as a reading. Assumptions, but: a wired thermometer of a common kind answers 85 °C when it was
 * asked too early, from memory; outdoor air has held more than 400 ppm since about 2015.
 */
const possible: Partial<Record<Quantity, { low: number; high: number }>> = {
  'air-temperature': { low: -45, high: 60 },
  'surface-temperature': { low: -45, high: 95 },
  'relative-humidity': { low: 1, high: 106 },
  'carbon-dioxide': { low: 250, high: 50_000 },
  'wood-moisture': { low: 2, high: 250 },
};
const powerOnC = 85;
/** Farther from the reading before than this, the power-on figure is no temperature. Assumption. */
const powerOnApartK = 10;
/** Possible readings in a row until it is believed again. Assumption. */
const leastGood = 3;

export interface Possible {
  goodFrom: number | null;
  good: number;
  last: number | null;
}

export const newPossible = (): Possible => ({ goodFrom: null, good: 0, last: null });

/** Looks whether a value can be at all. @param raw - as sent */
export function lookIfPossible(
  finding: Finding,
  state: Possible,
  quantity: Quantity,
  at: number,
  raw: number,
): void {
  const limits = possible[quantity];
  if (!limits) return;
  const isPowerOn =
    quantity.endsWith('temperature') &&
    raw === powerOnC &&
    (state.last === null || Math.abs(raw - state.last) > powerOnApartK);
  if (raw >= limits.low && raw <= limits.high && !isPowerOn) {
    state.last = raw;
    if (state.good === 0) state.goodFrom = at;
    state.good++;
    if (state.good >= leastGood) end(finding, state.goodFrom ?? at);
    return;
  }
  impossible(finding, state, quantity, at, raw);
}

/** Takes note of a figure that can be no reading. @param raw - as sent */
export function impossible(
  finding: Finding,
  state: Possible,
  quantity: Quantity,
  at: number,
  raw: number,
): void {
  state.good = 0;
  raise(finding, at, sentence('seen-impossible', { value: raw, quantity }));
}
