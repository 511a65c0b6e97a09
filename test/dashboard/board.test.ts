import { describe, expect, it } from 'vitest';
import { boardScale, kerfNames } from '../../dashboard/board/board-scale.ts';
import { BOARD_HEIGHT, brushEdge, grainOf } from '../../dashboard/board/grain.ts';

const need = (likely: number) => ({ early: likely * 0.8, likely, late: likely * 1.2 });
const needs = [
  { gate: 'turn', need: need(400) },
  { gate: 'recoat', need: need(880) },
  { gate: 'sand', need: need(970) },
] as const;

describe('the board of a batch', () => {
  it('has its paint front where the sum stands between the kerfs of what was and what comes', () => {
    const { front, kerfs } = boardScale(600, needs, 'recoat');
    const at = (gate: string) => kerfs.find((kerf) => kerf.gate === gate)?.position ?? Number.NaN;
    expect(at('turn')).toBeLessThan(front);
    expect(front).toBeLessThan(at('recoat'));
    expect(at('recoat')).toBeLessThan(at('sand'));
    expect(front / at('turn')).toBeCloseTo(600 / 400, 9);
  });

  it('has a soft band from early to late around the kerf of the job that is waited for', () => {
    const { band, kerfs } = boardScale(600, needs, 'recoat');
    const kerf = kerfs.find(({ gate }) => gate === 'recoat')?.position ?? Number.NaN;
    expect(band?.from).toBeCloseTo(kerf * 0.8, 9);
    expect(band?.to).toBeCloseTo(kerf * 1.2, 9);
  });

  it('never ends: however much was gained, some timber stays bare', () => {
    expect(boardScale(1e9, needs, 'sand').front).toBeLessThan(1);
  });

  it('is bare without anything known', () => {
    expect(boardScale(0, [], null)).toEqual({ front: 0, kerfs: [], band: null });
  });

  it('writes no name over another', () => {
    const kerfs = [
      { gate: 'turn', position: 0.05 },
      { gate: 'stack', position: 0.55 },
      { gate: 'mount', position: 0.62 },
      { gate: 'recoat', position: 0.69 },
      { gate: 'sand', position: 0.7 },
    ] as const;
    const said = (room: number) =>
      kerfNames(kerfs, () => room).map(({ gates, line, anchor }) => [gates.join(), line, anchor]);
    expect(said(0.13)).toEqual([
      ['turn', 0, 'start'],
      ['stack', 0, 'middle'],
      ['mount', 1, 'middle'],
      ['recoat,sand', 0, 'middle'],
    ]);
    // Names that are twice as long need a line more, and leave no end of the board.
    expect(said(0.26)).toEqual([
      ['turn', 0, 'start'],
      ['stack', 0, 'middle'],
      ['mount', 1, 'middle'],
      ['recoat,sand', 2, 'middle'],
    ]);
    expect(said(0.7).map(([, line, anchor]) => [line, anchor])).toEqual([
      [0, 'start'],
      [1, 'middle'],
      [2, 'middle'],
      [3, 'end'],
    ]);
  });
});

describe('the timber of a batch', () => {
  it('is the same for life, and another for another batch', () => {
    expect(grainOf('a')).toEqual(grainOf('a'));
    expect(grainOf('a')).not.toEqual(grainOf('b'));
    expect(brushEdge('a')).toBe(brushEdge('a'));
  });

  it('has knots only within the board', () => {
    for (let seed = 0; seed < 200; seed += 1) {
      for (const knot of grainOf(String(seed)).knots) {
        expect(knot.y - knot.ry).toBeGreaterThan(0);
        expect(knot.y + knot.ry).toBeLessThan(BOARD_HEIGHT);
      }
    }
  });
});
