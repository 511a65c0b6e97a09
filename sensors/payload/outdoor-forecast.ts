import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { isJsonObject, member, parsedJson } from './json.ts';
import { ownTime } from './own-time.ts';
import { because, type Refused, refuse, sent } from './refusal.ts';

/** One hour of a weather forecast. */
export type ForecastPoint = {
  readonly at: number;
  readonly tempC: number;
  /** Left out where the forecast does not tell it. */
  readonly rhPercent?: number;
  /** Rain within the hour, mm. */
  readonly rainMm?: number;
};

export type DecodedForecast =
  | { readonly kind: 'forecast'; readonly points: readonly ForecastPoint[] }
  | Refused;

/** Sixteen days by the hour. Assumption. */
export const mostForecastPoints = 400;
/** More rain than ever fell in an hour, mm. From memory: the record is about 305. */
const mostRainMm = 400;

/**
 * Reads a weather forecast for outdoors: a JSON array of `{"time":…,"tempC":…}`, times as in
 * readings, in any order; a point may also tell `rhPercent` and `rainMm`, the rain within its hour. The whole forecast is refused when one of its points is wrong: half a
 * forecast would mislead.
 *
 * @param text any text
 */
export function decodeForecast(text: string): DecodedForecast {
  const parsed = parsedJson(text);
  if (parsed.kind === 'refused') return parsed;
  const points = parsed.json;
  if (!Array.isArray(points) || points.length > mostForecastPoints) {
    return refuse({
      code: 'payload-shape',
      ...because('forecast-not-array', { points: mostForecastPoints }),
    });
  }
  const { low, high } = quantityFacts['air-temperature'];
  const read: ForecastPoint[] = [];
  for (const [i, point] of points.entries()) {
    const { time, tempC } = isJsonObject(point)
      ? { time: member(point, 'time'), tempC: member(point, 'tempC') }
      : {};
    const when = ownTime(time);
    if (when.kind === 'refused') return when;
    if (typeof tempC !== 'number' || !(tempC >= low && tempC <= high)) {
      return refuse({
        code: 'value-out-of-range',
        ...because('forecast-temperature', { point: i, sent: sent(tempC), low, high }),
      });
    }
    const more: { rhPercent?: number; rainMm?: number } = {};
    for (const [name, most] of [
      ['rhPercent', 100],
      ['rainMm', mostRainMm],
    ] as const) {
      const value = isJsonObject(point) ? member(point, name) : undefined;
      if (value === undefined || value === null) continue;
      if (typeof value !== 'number' || !(value >= 0 && value <= most)) {
        return refuse({
          code: 'value-out-of-range',
          ...because('forecast-figure', { point: i, field: name, sent: sent(value), most }),
        });
      }
      more[name] = value;
    }
    read.push({ at: when.at, tempC, ...more });
  }
  return { kind: 'forecast', points: read.sort((a, b) => a.at - b.at) };
}
