import type { Reason } from '../contract/gate.ts';
import type { TinFact } from './trade-facts.ts';

const dayMs = 86_400_000;

/** An opened tin older than this cures slowly, days. Common practice, no source; a setting. */
export const usualTinDays = 365;

/**
 * Why a coat out of a tin may cure slowly; empty when nothing speaks for it.
 *
 * @param at - when the coat went on, UTC epoch ms
 * @param oldAfterDays - see {@link usualTinDays}
 */
export function tinDoubts(
  tin: Pick<TinFact, 'name' | 'openedAt' | 'driers'>,
  at: number,
  oldAfterDays: number = usualTinDays,
): Reason[] {
  const doubts: Reason[] = [];
  const openDays = tin.openedAt === null ? 0 : (at - tin.openedAt) / dayMs;
  if (openDays > oldAfterDays) {
    doubts.push({
      code: 'tin-old',
      text: `The tin “${tin.name}” had been open for ${Math.floor(openDays / 30)} months: driers fade with age, so the coat is given more time. Try it on an offcut first.`,
    });
  }
  if (tin.driers === 'poor') {
    doubts.push({
      code: 'tin-drier-poor',
      text: `The paint in “${tin.name}” is poor in driers: the coat is given more time. Try it on an offcut first.`,
    });
  }
  return doubts;
}
