import { describe, expect, it } from 'vitest';
import { recoatWindow } from '../../daemon/rules/recoat-window.ts';

// Two weeks, washing and scuffing are common practice, no source.

const day = 86_400_000;
const summer = () => false;

describe('the next coat on one that has stood', () => {
  it('needs nothing within two weeks outdoors, nor after months on a rack', () => {
    expect(recoatWindow([{ kind: 'wall', fromAt: 0, toAt: 14 * day }], summer)).toEqual([]);
    expect(recoatWindow([{ kind: 'rack', fromAt: 0, toAt: 300 * day }], () => true)).toEqual([]);
  });

  it('is washed, dried and scuffed first after that', () => {
    const stays = [
      { kind: 'rack', fromAt: 0, toAt: 20 * day },
      { kind: 'wall', fromAt: 20 * day, toAt: 35 * day },
    ] as const;
    expect(recoatWindow(stays, summer).map(({ code }) => code)).toEqual(['recoat-wash']);
    expect(recoatWindow(stays, summer)[0]?.text).toMatch(/15 days: wash it, let it dry and scuff/);
  });

  it('is looked over for mould and chalk after a winter', () => {
    const winter = (at: number) => at > 40 * day && at < 60 * day;
    const codes = recoatWindow([{ kind: 'wall', fromAt: 0, toAt: 120 * day }], winter).map(
      ({ code }) => code,
    );
    expect(codes).toEqual(['recoat-wash', 'recoat-winter']);
  });
});
