import type { Reason } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';
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
    doubts.push(sentence('tin-old', { tinName: tin.name, months: Math.floor(openDays / 30) }));
  }
  if (tin.driers === 'poor') doubts.push(sentence('tin-drier-poor', { tinName: tin.name }));
  return doubts;
}
