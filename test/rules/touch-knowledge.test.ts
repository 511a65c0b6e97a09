import { describe, expect, it } from 'vitest';
import type { Gate } from '../../daemon/contract/gate.ts';
import { gateNeeds } from '../../daemon/rules/gate-need.ts';
import { learnedFrom, mixtureKey, ownTests } from '../../daemon/rules/touch-knowledge.ts';

let clock = 0;
const felt = (gate: Gate, passed: boolean, degreeHours: number) => ({
  gate,
  passed,
  at: ++clock,
  degreeHours,
});

describe('what one coat teaches about its paint', () => {
  it('is the interval between its last failed and its first passed test', () => {
    const tests = [
      felt('recoat', false, 610),
      felt('recoat', false, 700),
      felt('recoat', true, 760),
    ];
    expect(learnedFrom(tests, 1)).toEqual({ failedAt: 700, passedAt: 760 });
  });

  it('is carried to recoating by the job’s multiple and the film', () => {
    const scale = gateNeeds.mount.multiple * 1.25;
    expect(learnedFrom([felt('mount', true, 500)], 1.25)).toEqual({ passedAt: 500 / scale });
  });

  it('comes from the hardest job that was tested', () => {
    const tests = [felt('turn', false, 300), felt('recoat', true, 900)];
    expect(learnedFrom(tests, 1)).toEqual({ passedAt: 900 });
  });

  it('loses a pass that a later failed test took back', () => {
    const tests = [felt('recoat', true, 650), felt('recoat', false, 720)];
    expect(learnedFrom(tests, 1)).toEqual({ failedAt: 720 });
  });

  it('is nothing without a test', () => {
    expect(learnedFrom([], 1)).toBeNull();
  });
});

describe('what a coat’s own tests settle', () => {
  it('a failed easier test counts against a harder job, not the other way', () => {
    const tests = [felt('mount', false, 600)];
    expect(ownTests(tests, 'recoat').failedAt).toBe(600);
    expect(ownTests(tests, 'turn').failedAt).toBeNull();
  });

  it('a passed harder test counts for an easier job, not the other way', () => {
    const tests = [felt('mount', true, 600)];
    expect(ownTests(tests, 'turn').passedAt).toBe(600);
    expect(ownTests(tests, 'recoat').passedAt).toBeNull();
  });

  it('a pass before a failed test does not stand', () => {
    const tests = [felt('mount', true, 600), felt('stack', false, 650)];
    expect(ownTests(tests, 'mount')).toEqual({ failedAt: 650, passedAt: null });
  });
});

describe('paints that share what is learned', () => {
  const parts = { paint: 35, rawLinseedOil: 50, turpentine: 15 };
  it('are those of one mixture and colour, however the parts are written', () => {
    const doubled = { paint: 70, rawLinseedOil: 100, turpentine: 30 };
    expect(mixtureKey(doubled, ' Red ')).toBe(mixtureKey(parts, 'red'));
    expect(mixtureKey(parts, 'white')).not.toBe(mixtureKey(parts, 'red'));
    expect(mixtureKey({ ...parts, turpentine: 0 }, 'red')).not.toBe(mixtureKey(parts, 'red'));
  });
});
