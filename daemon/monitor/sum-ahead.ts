import type { SumAhead } from '../contract/curves.ts';
import { joinedSums, outlookHours } from '../rules/sums-to-come.ts';
import type { CoatCure } from './coat-cure.ts';

/** The sum that is to come of a coat, by the outlook that its verdicts go by; null without one. */
export function sumAhead(cure: CoatCure, untilDegreeHours: number): SumAhead | null {
  const { outlooks, progress, staleForMs } = cure;
  if (outlooks === null) return null;
  const hours = outlookHours(outlooks, progress, untilDegreeHours);
  const { at, early, likely, late } = joinedSums(outlooks, progress, hours, staleForMs);
  const thousandths = (sums: readonly number[]) => sums.map((sum) => Math.round(sum * 1e3) / 1e3);
  return {
    at: at.map((moment) => moment / 1000),
    early: thousandths(early),
    likely: thousandths(likely),
    late: thousandths(late),
  };
}
