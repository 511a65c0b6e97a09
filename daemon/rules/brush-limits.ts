import { brushLimits } from './brush-air.ts';

/** What the air, the timber and the hours ahead must be like for a coat. */
export interface ApplicationLimits {
  /** Colder than this no coat goes on, °C. */
  coldestC: number;
  /** Below this it dries very slowly, below the other slowly, °C. */
  verySlowBelowC: number;
  slowBelowC: number;
  /** Warmer than this a coat skins and shows brush marks, °C. */
  warmAboveC: number;
  hottestC: number;
  dampestRhPercent: number;
  dewMarginK: number;
  /** Wetter timber is not coated, % of oven-dry mass. */
  dampestWoodPercent: number;
  /** How many boards are to be measured, and for how long the figures hold, d. */
  boardsMeasured: number;
  moistureDays: number;
  /** The brush is put down so long before dew or cold, h. */
  stopBeforeDewHours: number;
  /** A coat outdoors is to have had so long before rain, h. */
  dryBeforeRainHours: number;
}

/**
 * The limits to begin with.
 *
 * **Source:** 5 °C, 32 °C, 85 % and 3 K as in `brushLimits`; 16 % at the surface: a public wood
 * guide (Swedish Wood); 2 h before dew: a US forest products note on house paint. Common practice,
 * no source: slow below 15 °C and very slow below 10 °C, warm above 25 °C, five boards, 24 h before
 * rain. Assumption: figures of a hand meter hold for 3 days.
 */
export const usualApplicationLimits: ApplicationLimits = {
  coldestC: brushLimits.coldestC,
  verySlowBelowC: 10,
  slowBelowC: 15,
  warmAboveC: 25,
  hottestC: brushLimits.hottestC,
  dampestRhPercent: brushLimits.dampestRhPercent,
  dewMarginK: brushLimits.dewMarginK,
  dampestWoodPercent: 16,
  boardsMeasured: 5,
  moistureDays: 3,
  stopBeforeDewHours: 2,
  dryBeforeRainHours: 24,
};
