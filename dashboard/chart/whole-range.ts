import type { BatchCurves, Curves } from '../../daemon/contract/curves.ts';
import type { Range } from './range.ts';

const DAY_S = 86_400;

/**
 * All that there is to see: from the first reading on, and of what is to come not much more than there
 * has been.
 */
export function wholeRangeOf(curves: Curves | BatchCurves): Range {
  const columns = [
    curves.tempC?.mean,
    curves.rhPercent?.mean,
    curves.woodMoisturePercent?.mean,
    curves.carbonDioxidePpm?.mean,
  ];
  const { at } = curves;
  // The middles of the stretches at both ends may lie a little outside of what was asked for.
  const asked = Math.min(Date.parse(curves.from) / 1000, at[0] ?? Number.POSITIVE_INFINITY);
  const until = Math.max(Date.parse(curves.to) / 1000, at[at.length - 1] ?? 0);
  const first = curves.at.findIndex((_, i) => columns.some((column) => column?.[i] != null));
  const starts = [
    ...(first === -1 ? [] : [(curves.at[first] ?? asked) - curves.stepS]),
    ...(curves.handMoisture ?? [])
      .slice(0, 1)
      .map((one) => Date.parse(one.at) / 1000 - curves.stepS),
  ];
  const from = starts.length === 0 ? asked : Math.max(asked, Math.min(...starts));
  const ahead = 'ahead' in curves ? curves.ahead : null;
  const aheadTo = ahead?.at[ahead.at.length - 1] ?? until;
  const to = Math.max(until, Math.min(aheadTo, until + Math.max(2 * DAY_S, 1.2 * (until - from))));
  return to > from ? { from, to } : { from: to - DAY_S, to };
}
