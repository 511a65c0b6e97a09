import { describe, expect, it } from 'vitest';
import type { GateVerdict, Reason } from '../../daemon/contract/gate.ts';
import { sharedReasons } from '../../dashboard/batch/shared-reasons.ts';

const reason = (code: string, text = code) => ({ code, text }) as Reason;
const job = (verdict: GateVerdict['verdict'], ...reasons: Reason[]) => ({ verdict, reasons });

describe('what several jobs have alike', () => {
  it('is said once, in the order it comes', () => {
    const shared = sharedReasons([
      job('ready', reason('cured-so-far', '900 of 400'), reason('one-sensor')),
      job('wait', reason('cured-so-far', '900 of 970'), reason('outlook'), reason('one-sensor')),
      job('wait', reason('cured-so-far', '900 of 990'), reason('outlook'), reason('one-sensor')),
    ]);
    expect(shared.map(({ code }) => code)).toEqual(['one-sensor', 'outlook']);
  });

  it('is neither how to test nor what is assumed: those stand elsewhere', () => {
    const usual = [reason('how-to-test'), reason('starting-assumption')];
    expect(sharedReasons([job('wait', ...usual), job('test', ...usual)])).toEqual([]);
  });

  it('is never what holds a job', () => {
    const cold = reason('air-cold');
    const held = job('hold', cold, reason('one-sensor'));
    const shared = sharedReasons([held, held, job('wait', cold, reason('one-sensor'))]);
    expect(shared.map(({ code }) => code)).toEqual(['one-sensor']);
  });
});
