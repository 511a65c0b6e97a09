import type { Reason } from '../contract/gate.ts';
import { dewMargin, LEAST_DEW_MARGIN_K } from '../science/dew-margin.ts';

/**
 * Limits of the air at the brush.
 * **Source:** 85 % and 3 K: common practice with ISO 8502-4 (written for steel); 32 °C: a US forest
 * products note on house paint; 5 °C: common practice, no source (the Wood Handbook, chapter 16,
 * says 4 °C for oil paint).
 */
export const brushLimits = {
  coldestC: 5,
  hottestC: 32,
  dampestRhPercent: 85,
  dewMarginK: LEAST_DEW_MARGIN_K,
} as const;

/** The air as far as it is known; null where no sensor tells it. */
export interface AirNow {
  tempC: number | null;
  rhPercent: number | null;
  stale: boolean;
}

/** What in the air forbids going on with the brush now. */
export function brushHolds(air: AirNow): Reason[] {
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
  if (tempC < brushLimits.coldestC) {
    holds.push({
      code: 'air-cold',
      text: `Too cold to brush: ${tempC.toFixed(1)} °C, at least ${brushLimits.coldestC} °C.`,
    });
  }
  if (tempC > brushLimits.hottestC) {
    holds.push({
      code: 'air-hot',
      text: `Too hot to brush: ${tempC.toFixed(1)} °C, at most ${brushLimits.hottestC} °C.`,
    });
  }
  if (rhPercent !== null && rhPercent > brushLimits.dampestRhPercent) {
    holds.push({
      code: 'air-damp',
      text: `Too damp to brush: ${Math.round(rhPercent)} % humidity, at most ${brushLimits.dampestRhPercent} %.`,
    });
  }
  if (rhPercent !== null) {
    const marginK = dewMargin(tempC, { tempC, rhPercent });
    if (marginK < brushLimits.dewMarginK) {
      holds.push({
        code: 'air-near-dew',
        text: `Too near the dew point to brush: ${marginK.toFixed(1)} K above it, at least ${brushLimits.dewMarginK} K.`,
      });
    }
  }
  return holds;
}
