import { hourMs } from '../rules/cure-span.ts';
import type { OutdoorForecastPoint } from '../rules/facts.ts';
import type { HourAhead } from '../rules/hour-ahead.ts';
import type { PlaceOutlooks } from './place-outlook.ts';
import type { SiteFacts } from './site-facts.ts';

/** How far ahead a day’s work is looked at, h. */
const lookAheadHours = 36;

interface AheadParts {
  facts: () => SiteFacts;
  outlooks: PlaceOutlooks;
  forecast: () => readonly OutdoorForecastPoint[];
}

export interface AirAhead {
  hours: HourAhead[];
  /** Whether a weather forecast that somebody sent went into it. */
  fromForecast: boolean;
}

/** The coming hours at a place: its outlook, and outdoors what the weather forecast tells beside. */
export function airAhead({ facts, outlooks, forecast }: AheadParts) {
  return (placeId: string, now: number): AirAhead => {
    const outlook = outlooks.outlookAt(placeId)?.air;
    if (!outlook) return { hours: [], fromForecast: false };
    const kind = facts().places.get(placeId)?.kind;
    const isOutside = kind === 'outdoors' || kind === 'wall';
    const points = forecast();
    const hours: HourAhead[] = [];
    const first = Math.max(0, Math.floor((now - outlook.fromAt) / hourMs));
    for (let i = first; i < first + lookAheadHours && i < outlook.tempC.length; i++) {
      const at = outlook.fromAt + i * hourMs;
      const told = isOutside ? pointOf(points, at) : null;
      hours.push({
        at,
        tempC: outlook.tempC[i] as number,
        errorK: outlook.errorK[i] as number,
        rhPercent: told?.rhPercent ?? outlook.rhPercent?.[i] ?? null,
        rainMm: isOutside ? (told?.rainMm ?? null) : 0,
      });
    }
    const lastAt = hours.at(-1)?.at ?? 0;
    return { hours, fromForecast: points.some(({ at }) => at >= now && at <= lastAt) };
  };
}
export type AirAheadReader = ReturnType<typeof airAhead>;

/** The point of a forecast that is nearest to the middle of an hour, where one is near enough. */
function pointOf(points: readonly OutdoorForecastPoint[], at: number): OutdoorForecastPoint | null {
  const middle = at + hourMs / 2;
  let nearest: OutdoorForecastPoint | null = null;
  for (const point of points) {
    const apart = Math.abs(point.at - middle);
    if (apart <= 1.5 * hourMs && (!nearest || apart < Math.abs(nearest.at - middle))) {
      nearest = point;
    }
  }
  return nearest;
}
