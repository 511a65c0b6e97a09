import { absoluteHumidity, saturationVapourPressure } from '../../../daemon/science/air.ts';
import { seededRandom } from './random.ts';

/** The air outside at one moment. */
export interface OutdoorAir {
  readonly tempC: number;
  readonly absoluteHumidityGM3: number;
}

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const YEAR_DAYS = 365.25;

// an invented temperate inland climate; assumptions, no source
const YEAR_MEAN_C = 8.5;
const YEAR_SWING_C = 8.5;
const WARMEST_DAY_OF_YEAR = 200;
const WARMEST_HOUR_UTC = 15;
const DAY_SWING_C = 5;
const DRIFT_PERIODS_DAYS = [2.3, 4.1, 7.7] as const;

/**
 * Invented weather: seasons, days, passing fronts and their damp, each drawn once from the seed.
 *
 * @param seed - any integer
 * @returns the air at a UTC epoch-millisecond moment; a pure function of it, so a past can be asked
 *   for at any time. The dew point lies a little under the night's lowest temperature, so clear
 *   nights come near saturation (**Source:** Wood Handbook FPL-GTR-190, ch. 16: the night minimum
 *   is close to the dew point)
 */
export function outdoorWeather(seed: number): (at: number) => OutdoorAir {
  const random = seededRandom(seed, 1);
  const drifts = DRIFT_PERIODS_DAYS.map((days) => ({
    periodMs: days * DAY_MS * random.between(0.9, 1.1),
    swingC: random.between(0.8, 1.6),
    phase: random.between(0, 2 * Math.PI),
  }));
  const cloud = { periodMs: random.between(3, 6) * DAY_MS, phase: random.between(0, 2 * Math.PI) };

  return (at) => {
    const day = at / DAY_MS;
    const season =
      YEAR_MEAN_C +
      YEAR_SWING_C * Math.cos((2 * Math.PI * (day - WARMEST_DAY_OF_YEAR)) / YEAR_DAYS);
    let drift = 0;
    for (const { periodMs, swingC, phase } of drifts) {
      drift += swingC * Math.sin((2 * Math.PI * at) / periodMs + phase);
    }
    const clearness = 0.5 + 0.5 * Math.sin((2 * Math.PI * at) / cloud.periodMs + cloud.phase);
    const swing = DAY_SWING_C * (0.4 + 0.6 * clearness);
    const hour = at / HOUR_MS;
    const tempC = season + drift + swing * Math.cos((2 * Math.PI * (hour - WARMEST_HOUR_UTC)) / 24);
    const dewPointC = season + drift - swing - (0.5 + 2.5 * clearness);
    const rhPercent = Math.min(
      100,
      (100 * saturationVapourPressure(dewPointC)) / saturationVapourPressure(tempC),
    );
    return { tempC, absoluteHumidityGM3: absoluteHumidity(tempC, rhPercent) };
  };
}
