import type { Reason } from '../contract/gate.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { dewMargin } from '../science/dew-margin.ts';
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
    return [
      {
        code: 'air-unknown',
        text: 'There is no fresh reading of the air here: look at temperature and damp before you brush.',
      },
    ];
  }
  const holds: Reason[] = [];
  const { tempC, rhPercent } = air;
  if (tempC < limits.coldestC) {
    holds.push({
      code: 'air-cold',
      text: `Too cold to brush: ${tempC.toFixed(1)} °C, at least ${limits.coldestC} °C.`,
    });
  }
  if (tempC > limits.hottestC) {
    holds.push({
      code: 'air-hot',
      text: `Too hot to brush: ${tempC.toFixed(1)} °C, at most ${limits.hottestC} °C.`,
    });
  }
  if (rhPercent !== null && rhPercent > limits.dampestRhPercent) {
    holds.push({
      code: 'air-damp',
      text: `Too damp to brush: ${Math.round(rhPercent)} % humidity, at most ${limits.dampestRhPercent} %.`,
    });
  }
  if (rhPercent !== null) {
    const marginK = dewMargin(tempC, { tempC, rhPercent });
    if (marginK < limits.dewMarginK) {
      holds.push({
        code: 'air-near-dew',
        text: `Too near the dew point to brush: ${marginK.toFixed(1)} K above it, at least ${limits.dewMarginK} K.`,
      });
    }
  }
  return holds;
}
