import { describe, expect, it } from 'vitest';
import { decodeForecast, mostForecastPoints } from '../../sensors/payload/outdoor-forecast.ts';

const point = (time: unknown, tempC: unknown) => JSON.stringify([{ time, tempC }]);
const codeOf = (text: string) => {
  const decoded = decodeForecast(text);
  return decoded.kind === 'refused' ? decoded.refusal.code : decoded.kind;
};

describe('a weather forecast', () => {
  it('is an array of times and temperatures, in the order of time whatever it came in', () => {
    const text = JSON.stringify([
      { time: '2026-05-04T09:00:00+02:00', tempC: 9.5, wind: 3 },
      { time: 1_777_870_800, tempC: -2 },
    ]);
    expect(decodeForecast(text)).toEqual({
      kind: 'forecast',
      points: [
        { at: 1_777_870_800_000, tempC: -2 },
        { at: Date.UTC(2026, 4, 4, 7), tempC: 9.5 },
      ],
    });
  });

  it('may be taken back by an empty one', () => {
    expect(decodeForecast('[]')).toEqual({ kind: 'forecast', points: [] });
  });

  it('is refused as a whole, and says where', () => {
    expect(codeOf('[')).toBe('payload-not-json');
    expect(codeOf('{}')).toBe('payload-shape');
    expect(codeOf('[null]')).toBe('time-not-understood');
    expect(codeOf(point('2026-05-04T09:00:00', 9))).toBe('time-not-understood');
    expect(codeOf(point('2026-05-04T09:00:00Z', '9'))).toBe('value-out-of-range');
    expect(codeOf(point('2026-05-04T09:00:00Z', 1e9))).toBe('value-out-of-range');
    expect(codeOf(JSON.stringify(Array(mostForecastPoints + 1).fill({})))).toBe('payload-shape');
  });
});
