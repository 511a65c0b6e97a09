import { describe, expect, it } from 'vitest';
import { dewPoint, relativeHumidity } from '../../daemon/science/air.ts';
import { outdoorWeather } from '../../sensors/shed/physics/weather.ts';

const HOUR_MS = 3_600_000;
const hours = (from: number, count: number) =>
  Array.from({ length: count }, (_, hour) => from + hour * HOUR_MS);
const mean = (values: number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;

describe('invented weather', () => {
  it('is the same for a seed and another for another seed', () => {
    const at = Date.UTC(2026, 4, 12, 9);
    expect(outdoorWeather(3)(at)).toEqual(outdoorWeather(3)(at));
    expect(outdoorWeather(3)(at)).not.toEqual(outdoorWeather(4)(at));
  });

  it.each([1, 2, 3])('never holds more vapour than the air can (seed %i)', (seed) => {
    const weather = outdoorWeather(seed);
    for (const at of hours(Date.UTC(2026, 0, 1), 365 * 24)) {
      const { tempC, absoluteHumidityGM3 } = weather(at);
      const rhPercent = relativeHumidity(tempC, absoluteHumidityGM3);
      expect(rhPercent).toBeGreaterThan(5);
      expect(rhPercent).toBeLessThanOrEqual(100 + 1e-9);
    }
  });

  it('is warmer in July than in January and warmer in the afternoon than before dawn', () => {
    const weather = outdoorWeather(1);
    const month = (index: number) =>
      mean(hours(Date.UTC(2026, index, 1), 28 * 24).map((at) => weather(at).tempC));
    expect(month(6) - month(0)).toBeGreaterThan(10);
    const days = Array.from({ length: 60 }, (_, day) => Date.UTC(2026, 4, 1 + day));
    const warmer = days.filter(
      (day) => weather(day + 15 * HOUR_MS).tempC > weather(day + 3 * HOUR_MS).tempC,
    );
    expect(warmer).toHaveLength(60);
  });

  it('brings the night’s lowest temperature close to the dew point', () => {
    // source: Wood Handbook FPL-GTR-190, ch. 16
    const weather = outdoorWeather(1);
    const margins = Array.from({ length: 60 }, (_, day) => {
      const night = hours(Date.UTC(2026, 4, 1 + day), 7).map(weather);
      return Math.min(
        ...night.map(({ tempC, absoluteHumidityGM3 }) => {
          const rhPercent = Math.min(100, relativeHumidity(tempC, absoluteHumidityGM3));
          return tempC - dewPoint(tempC, rhPercent);
        }),
      );
    });
    expect(mean(margins)).toBeLessThan(3);
    expect(Math.min(...margins)).toBeGreaterThanOrEqual(-1e-9);
  });
});
