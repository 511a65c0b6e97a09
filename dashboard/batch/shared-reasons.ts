import type { GateVerdict, Reason } from '../../daemon/contract/gate.ts';

/** How to test stands in the fold of its job, and the footnote says what is assumed. */
export function isNews({ code }: Pick<Reason, 'code'>): boolean {
  return code !== 'how-to-test' && code !== 'starting-assumption';
}

/**
 * Reasons that several jobs have alike, in the order they come: they are said once for all. What holds
 * a job, its first reason, stays with it.
 */
export function sharedReasons(
  verdicts: readonly Pick<GateVerdict, 'verdict' | 'reasons'>[],
): Reason[] {
  const told = verdicts.flatMap(({ verdict, reasons }) =>
    reasons.filter(isNews).slice(verdict === 'hold' ? 1 : 0),
  );
  const held = verdicts.flatMap(({ verdict, reasons }) =>
    verdict === 'hold' ? reasons.filter(isNews).slice(0, 1) : [],
  );
  return told.filter(
    ({ text }, at) =>
      told.findIndex((one) => one.text === text) === at &&
      told.filter((one) => one.text === text).length > 1 &&
      !held.some((one) => one.text === text),
  );
}
