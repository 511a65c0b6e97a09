import type { Reason } from '../contract/gate.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { dewMargin } from '../science/dew-margin.ts';
import { sentence } from '../wording/english.ts';
import { usualApplicationLimits } from './application-limits.ts';

/** The air as far as it is known; null where no sensor tells it. */
export interface AirNow {
  tempC: number | null;
  rhPercent: number | null;
  stale: boolean;
}

/** What in the air forbids going on with the brush now. */
export function brushHolds(
  air: AirNow,
  limits: ApplicationLimits = usualApplicationLimits,
): Reason[] {
  if (air.tempC === null || air.stale) {
    return [sentence('air-unknown', {})];
  }
  const holds: Reason[] = [];
  const { tempC, rhPercent } = air;
  if (tempC < limits.coldestC) {
    holds.push(sentence('air-cold', { tempC, limitC: limits.coldestC }));
  }
  if (tempC > limits.hottestC) {
    holds.push(sentence('air-hot', { tempC, limitC: limits.hottestC }));
  }
  if (rhPercent !== null && rhPercent > limits.dampestRhPercent) {
    holds.push(sentence('air-damp', { rhPercent, limitPercent: limits.dampestRhPercent }));
  }
  if (rhPercent !== null) {
    const marginK = dewMargin(tempC, { tempC, rhPercent });
    if (marginK < limits.dewMarginK) {
      holds.push(sentence('air-near-dew', { marginK, limitK: limits.dewMarginK }));
    }
  }
  return holds;
}
