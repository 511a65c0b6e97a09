import type { ApplicationLimits } from '../contract/trade.ts';
import { LEAST_DEW_MARGIN_K } from '../science/dew-margin.ts';

/**
 * Limits of air, timber and the hours ahead for a coat, to begin with; every one is a setting, and the
 * paint maker’s sheet comes before them.
 *
 * **Source:** 85 % and 3 K: common practice with ISO 8502-4 (written for steel); 32 °C and 2 h before
 * dew: a US forest products note on house paint; 16 % at the surface: a public wood guide (Swedish
 * Wood). Common practice, no source: 5 °C (the Wood Handbook, chapter 16, says 4 °C for oil paint),
 * slow below 15 °C and very slow below 10 °C, warm above 25 °C, five boards, 30 cm from the end, 24 h
 * before rain. Assumption: figures of a hand meter hold for 3 days.
 */
export const usualApplicationLimits: ApplicationLimits = {
  coldestC: 5,
  verySlowBelowC: 10,
  slowBelowC: 15,
  warmAboveC: 25,
  hottestC: 32,
  dampestRhPercent: 85,
  dewMarginK: LEAST_DEW_MARGIN_K,
  dampestWoodPercent: 16,
  boardsMeasured: 5,
  fromEndMm: 300,
  moistureDays: 3,
  stopBeforeDewHours: 2,
  dryBeforeRainHours: 24,
};
