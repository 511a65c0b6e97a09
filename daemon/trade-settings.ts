import { siteTimeZone } from './notices-out.ts';
import type { TradeRules } from './rules/usual-trade.ts';
import type { Settings } from './settings/schema.ts';

const minuteMs = 60_000;

/** The trade as the settings of a site say. */
export function tradeRules(
  settings: Pick<Settings, 'application' | 'trade' | 'timeZone'>,
): TradeRules {
  const { application, trade } = settings;
  return {
    application,
    stockSizes: trade.stockSizes.map((text) => {
      const [widthMm = 0, thicknessMm = 0] = text.split('x').map(Number);
      return { widthMm, thicknessMm };
    }),
    stockLengthsMm: trade.stockLengthsMm,
    weatheredAfterDays: trade.weatheredAfterDays,
    tinOldAfterDays: trade.tinOldAfterDays,
    look: {
      afterMs: trade.lookAfterMinutes * minuteMs,
      untilMs: trade.lookUntilMinutes * minuteMs,
    },
    hemisphere: trade.hemisphere,
    timeZone: siteTimeZone(settings),
  };
}
