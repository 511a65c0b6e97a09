import { describe, expect, it } from 'vitest';
import { brushHolds } from '../../daemon/rules/brush-air.ts';

const codes = (tempC: number | null, rhPercent: number | null, stale = false) =>
  brushHolds({ tempC, rhPercent, stale }).map((reason) => reason.code);

describe('the air at the brush', () => {
  it('is fit between 5 and 32 °C, up to 85 % and 3 K above the dew point', () => {
    expect(codes(18, 60)).toEqual([]);
    expect(codes(18, null)).toEqual([]);
  });

  it('is too cold, too hot or too damp beyond', () => {
    expect(codes(4.9, 60)).toEqual(['air-cold']);
    expect(codes(32.5, 40)).toEqual(['air-hot']);
    expect(codes(18, 86)).toEqual(['air-damp', 'air-near-dew']);
  });

  // At 20 °C and 83 % the dew point is 17.0 °C by the printed psychrolib table at 80 and 95 %.
  it('is too near the dew point within 3 K of it', () => {
    expect(codes(20, 84.9)).toEqual(['air-near-dew']);
    expect(codes(20, 80)).toEqual([]);
  });

  it('is not judged where nobody read it', () => {
    expect(codes(null, null)).toEqual(['air-unknown']);
    expect(codes(18, 60, true)).toEqual(['air-unknown']);
  });
});
