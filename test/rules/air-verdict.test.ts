import { describe, expect, it } from 'vitest';
import { type AirEvidence, airVerdict } from '../../daemon/rules/air-verdict.ts';

const nothing: AirEvidence = {
  airChange: null,
  stagnantShare: null,
  excessGM3: null,
  dampShare: null,
  rhPercent: null,
  colderByK: null,
  givesOffWater: false,
  buffered: false,
};
const changes = (perHour: number, low: number, high: number) => ({
  identifiable: true,
  perHour,
  low,
  high,
});
const judged = (more: Partial<AirEvidence>) => {
  const { airflow, reasons } = airVerdict({ ...nothing, ...more });
  return { airflow, codes: reasons.map((reason) => reason.code) };
};

describe('the air of a place', () => {
  it('cannot be told without evidence, and says why', () => {
    expect(judged({})).toEqual({ airflow: 'cannot-tell', codes: ['air-cannot-tell'] });
    const flat = { identifiable: false, reason: 'flat' as const };
    expect(airVerdict({ ...nothing, airChange: flat }).reasons[0]?.text).toMatch(/hardly changed/);
  });

  it('is good only when the whole interval says that it is changed often enough', () => {
    expect(judged({ airChange: changes(2, 1.2, 3) }).airflow).toBe('good');
    expect(judged({ airChange: changes(1.2, 0.8, 1.9) }).airflow).toBe('cannot-tell');
  });

  it('is poor only when the whole interval says that it is changed too seldom', () => {
    expect(judged({ airChange: changes(0.3, 0.2, 0.45) }).airflow).toBe('poor');
    expect(judged({ airChange: changes(0.4, 0.3, 0.7) }).airflow).toBe('cannot-tell');
  });

  it('is not called poor for few changes alone where boards hold vapour back', () => {
    const buffered = airVerdict({ ...nothing, airChange: changes(0.2, 0.1, 0.3), buffered: true });
    expect(buffered.airflow).toBe('cannot-tell');
    expect(buffered.reasons[0]?.text).toMatch(/boards take up and give off moisture/);
  });

  it('is poor where a rack stays moister than its room', () => {
    expect(judged({ stagnantShare: 0.9, excessGM3: 1.8 })).toEqual({
      airflow: 'poor',
      codes: ['air-stagnant'],
    });
    expect(judged({ stagnantShare: 0.5, excessGM3: 1.8 }).airflow).toBe('cannot-tell');
  });

  it('is not blamed for what drying timber or a fresh coat gives off', () => {
    const drying = judged({ stagnantShare: 0.9, excessGM3: 1.8, givesOffWater: true });
    expect(drying.airflow).toBe('cannot-tell');
    expect(drying.codes).toContain('air-moister-drying');
  });

  it('is poor where it stays damp, whatever is changed', () => {
    const damp = judged({ dampShare: 0.95, rhPercent: 88, airChange: changes(3, 2, 4) });
    expect(damp).toEqual({ airflow: 'poor', codes: ['air-damp-long'] });
  });

  it('names a rack that is colder than another', () => {
    expect(judged({ colderByK: 3.5 }).codes).toContain('rack-colder');
    expect(judged({ colderByK: 2 }).codes).not.toContain('rack-colder');
  });

  it('never calls anything safe', () => {
    const words = airVerdict({ ...nothing, airChange: changes(3, 2, 4) }).reasons;
    expect(words.map((reason) => reason.text).join(' ')).not.toMatch(/safe/i);
  });
});
