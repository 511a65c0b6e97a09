import { describe, expect, it } from 'vitest';
import { randomFromWords, seededRandom } from '../../sensors/shed/physics/random.ts';

describe('repeatable chance', () => {
  it('gives the published sequence of xoshiro128** from the words 1, 2, 3, 4', () => {
    // source: test vector of the reference implementation of Blackman and Vigna, version 1.1
    const random = randomFromWords([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, () => random.word())).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
      4258142804,
    ]);
  });

  it('repeats itself for a seed and differs between seeds and between streams', () => {
    const draw = (seed: number, stream: number) => {
      const random = seededRandom(seed, stream);
      return Array.from({ length: 20 }, () => random.uniform());
    };
    expect(draw(1, 0)).toEqual(draw(1, 0));
    expect(draw(1, 0)).not.toEqual(draw(2, 0));
    expect(draw(1, 0)).not.toEqual(draw(1, 1));
  });

  it('draws normal numbers with mean 0, variance 1 and 95 % within 1.96', () => {
    // source: standard normal distribution; bounds are five standard errors of 20,000 draws
    const random = seededRandom(5);
    const draws = Array.from({ length: 20_000 }, () => random.normal());
    const mean = draws.reduce((sum, each) => sum + each, 0) / draws.length;
    const variance = draws.reduce((sum, each) => sum + each * each, 0) / draws.length;
    const inside = draws.filter((each) => Math.abs(each) < 1.959964).length / draws.length;
    expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(draws.length));
    expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / draws.length));
    expect(Math.abs(inside - 0.95)).toBeLessThan(5 * Math.sqrt((0.95 * 0.05) / draws.length));
  });
});
