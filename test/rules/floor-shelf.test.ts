import { describe, expect, it } from 'vitest';
import { floorHolds, floorReasons } from '../../daemon/rules/floor-shelf.ts';
import { dewPoint } from '../../daemon/science/air.ts';

const lone = { name: 'node-1', height: null };
/** 20 °C with the dew point so far below, K. */
const air = (marginK: number) => {
  let rhPercent = 100;
  while (20 - dewPoint(20, rhPercent, { over: 'water' }) < marginK) rhPercent -= 0.01;
  return { tempC: 20, rhPercent, stale: false };
};

describe('the bottom shelf beside a lone sensor', () => {
  it('holds back the brush where 2 K less come too near the dew point', () => {
    expect(floorHolds(lone, air(4.5), 2, 3).map(({ code }) => code)).toEqual(['floor-near-dew']);
    expect(floorHolds(lone, air(5.2), 2, 3)).toEqual([]);
  });
  it('says nothing where the sensor itself is too near: that is said already', () => {
    expect(floorHolds(lone, air(2.5), 2, 3)).toEqual([]);
  });
  it('is not guessed at where the sensor lies there, where there are more, or where someone looked', () => {
    expect(floorHolds({ ...lone, height: 'bottom-shelf' }, air(4.5), 2, 3)).toEqual([]);
    expect(floorHolds(null, air(4.5), 2, 3)).toEqual([]);
    expect(floorHolds(lone, air(4.5), 0, 3)).toEqual([]);
  });
  it('is named with how much longer a coat takes there: 15 of 13 at 20 °C over 5 °C', () => {
    const rateAt = (tempC: number) => Math.max(0, tempC - 5) / 15;
    expect(floorReasons(lone, 20, 2, rateAt)[0]?.text).toContain('about 15 % longer');
    expect(floorReasons(lone, 6, 2, rateAt)[0]?.text).toContain('nothing is gained');
  });
});
