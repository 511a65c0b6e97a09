import type { ApplicationLimits, StockSize } from '../contract/trade.ts';
import { usualApplicationLimits } from './application-limits.ts';
import { type LookTimes, usualLook } from './coating-steps.ts';
import { usualTinDays } from './tin-age.ts';

/** What the settings say of the trade at a site. */
export interface TradeRules {
  application: ApplicationLimits;
  stockSizes: readonly StockSize[];
  stockLengthsMm: readonly number[];
  /** Days that bare timber may lie outdoors before it counts as weathered. */
  weatheredAfterDays: number;
  tinOldAfterDays: number;
  look: LookTimes;
  hemisphere: 'north' | 'south';
  /** IANA name of the zone whose days are the site’s. */
  timeZone: string;
}

/** The trade where nobody set anything else. */
export const usualTrade: TradeRules = {
  application: usualApplicationLimits,
  stockSizes: [
    { widthMm: 120, thicknessMm: 22 },
    { widthMm: 145, thicknessMm: 22 },
    { widthMm: 170, thicknessMm: 22 },
    { widthMm: 195, thicknessMm: 25 },
  ],
  stockLengthsMm: [3600, 4200, 4800, 5400],
  weatheredAfterDays: 14,
  tinOldAfterDays: usualTinDays,
  look: usualLook,
  hemisphere: 'north',
  timeZone: 'UTC',
};
