import { describe, expect, it } from 'vitest';
import { gates } from '../../daemon/contract/gate.ts';
import { gateNeeds } from '../../daemon/rules/gate-need.ts';
import { type GateQuestion, gateVerdict } from '../../daemon/rules/gate-verdict.ts';
import { stageOf } from '../../daemon/rules/stage.ts';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { fitRequirement } from '../../daemon/science/touch.ts';

const hour = 3_600_000;
const now = Date.UTC(2026, 4, 4, 12);
/** Common practice, no source: a coat dries in 2 to 3 days at 20 °C, over a datum of 5 °C. */
const requirement = fitRequirement([], { p10: 720, p90: 1080 });

const nurseSaul = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const arrhenius = {
  rate: 'arrhenius',
  activationEnergyJPerMol: 50_000,
  referenceC: 20,
  maxGapHours: 3,
} as const;

/** What lies ahead after a day at a steady temperature. */
function steady(tempC: number) {
  const history = Array.from({ length: 25 }, (_, i) => ({ at: now - i * hour, tempC }));
  const outlook = temperatureOutlook(history);
  if (!outlook) throw new Error('no outlook');
  return { ruling: cureAhead(outlook, nurseSaul), beside: cureAhead(outlook, arrhenius) };
}
const at20C = steady(20);

function question(degreeHours: number, more: Partial<GateQuestion> = {}): GateQuestion {
  return {
    gate: 'recoat',
    progress: {
      degreeHours,
      uncappedDegreeHours: degreeHours,
      degreeHoursHigh: degreeHours,
      otherDegreeHours: degreeHours,
      coveredHours: degreeHours / 15,
      gapHours: 0,
      lastReadingAt: now,
    },
    outlooks: at20C,
    gaining: true,
    staleForMs: 0,
    requirement,
    learnedFrom: 0,
    film: 1,
    own: { failedAt: null, passedAt: null },
    holds: [],
    stillAir: false,
    limits: { testAt: 0.5, readyAt: 0.9, boardSpread: 0 },
    now,
    ...more,
  };
}

describe('the verdict on a coat', () => {
  it('goes from wait over test to ready as the sum grows', () => {
    expect(gateVerdict(question(0)).verdict).toBe('wait');
    expect(gateVerdict(question(860)).verdict).toBe('wait');
    expect(gateVerdict(question(900)).verdict).toBe('test');
    expect(gateVerdict(question(1070)).verdict).toBe('test');
    expect(gateVerdict(question(1085)).verdict).toBe('ready');
  });

  it('expects recoating between two and three days after a coat at a steady 20 °C', () => {
    const { earlyAt, likelyAt, lateAt } = gateVerdict(question(0));
    const [early, late] = [earlyAt, lateAt].map((at) => ((at ?? 0) - now) / hour);
    // 48 and 72 h is the need alone; one steady day of readings leaves some doubt of the next ones.
    expect(early).toBeGreaterThan(44);
    expect(early).toBeLessThanOrEqual(48);
    expect(late).toBeGreaterThanOrEqual(72);
    expect(late).toBeLessThan(78);
    expect(((likelyAt ?? 0) - now) / hour).toBeCloseTo(requirement.p50 / 15, 1);
    expect(likelyAt).toBeGreaterThan(now + 48 * hour);
    expect(likelyAt).toBeLessThan(now + 72 * hour);
  });

  it('is later in the cold by the ratio of the rates', () => {
    const warm = gateVerdict(question(0)).likelyAt ?? 0;
    const cold = gateVerdict(question(0, { outlooks: steady(10) }));
    // Nurse–Saul over a datum of 5 °C: (20 − 5) / (10 − 5).
    expect(((cold.likelyAt ?? 0) - now) / (warm - now)).toBeCloseTo(3, 2);
    expect(cold.earlyAt).toBeLessThan(now + 3 * 48 * hour);
  });

  it('counts nothing for the time since a reading that is long ago', () => {
    const fresh = gateVerdict(question(300)).likelyAt ?? 0;
    const stale = gateVerdict(question(300, { staleForMs: 10 * hour })).likelyAt ?? 0;
    expect(stale - fresh).toBe(10 * hour);
  });

  it('is hold, with the reason first, when cured enough but something else forbids it', () => {
    const holds = [{ code: 'air-damp', text: 'Too damp to brush.' }];
    const answer = gateVerdict(question(1200, { holds }));
    expect(answer.verdict).toBe('hold');
    expect(answer.reasons[0]?.code).toBe('air-damp');
    expect(gateVerdict(question(100, { holds })).verdict).toBe('wait');
  });

  it('never says ready without a reading', () => {
    const silent = question(0);
    const answer = gateVerdict({
      ...silent,
      progress: { ...silent.progress, lastReadingAt: null, gapHours: 200 },
      outlooks: null,
      gaining: null,
    });
    expect(answer).toMatchObject({ verdict: 'wait', probability: 0, likelyAt: null });
    expect(answer.reasons.map((reason) => reason.code)).toContain('no-readings');
  });

  it('is put off by this coat’s own failed test, and settled by a passed one', () => {
    const failed = gateVerdict(question(1100, { own: { failedAt: 1090, passedAt: null } }));
    expect(failed.verdict).toBe('wait');
    expect(failed.required.early).toBeGreaterThan(1090);
    const passed = gateVerdict(question(700, { own: { failedAt: null, passedAt: 690 } }));
    expect(passed).toMatchObject({ verdict: 'ready', probability: 1 });
  });

  it('speaks for the slowest tenth of the boards where they differ', () => {
    const limits = { testAt: 0.5, readyAt: 0.9, boardSpread: 0.1 };
    const slow = gateVerdict(question(1085, { limits }));
    expect(slow.verdict).toBe('test');
    // 1.2816 is the 90 % point of the standard normal distribution (any table of it).
    expect(slow.required.likely).toBeCloseTo(requirement.p50 * Math.exp(0.12816), 1);
  });

  it('is given a wider spread and a reason where the air is poor, and nothing in silence', () => {
    const fresh = gateVerdict(question(1085));
    const still = gateVerdict(question(1085, { stillAir: true }));
    expect(fresh.verdict).toBe('ready');
    expect(still.verdict).toBe('test');
    expect(still.required.late - still.required.early).toBeGreaterThan(
      fresh.required.late - fresh.required.early,
    );
    expect(still.required.early).toBeGreaterThanOrEqual(fresh.required.early);
    expect(still.required.late).toBeLessThanOrEqual(1.25 * fresh.required.late);
    expect(still.reasons.map((reason) => reason.code)).toContain('air-poor');
    const atLate = gateVerdict(question(still.required.late + 0.01, { stillAir: true }));
    expect(atLate.probability).toBeCloseTo(0.9, 4);
  });

  it('needs more for a fatter film', () => {
    const thick = gateVerdict(question(1085, { film: 1.5 }));
    expect(thick.verdict).toBe('wait');
    expect(thick.required.likely).toBeCloseTo(1.5 * requirement.p50, 6);
  });

  it('names heat that is not counted, gaps, and models that differ', () => {
    const plain = question(600);
    const codes = gateVerdict({
      ...plain,
      progress: {
        ...plain.progress,
        uncappedDegreeHours: 700,
        otherDegreeHours: 900,
        gapHours: 7,
      },
    }).reasons.map((reason) => reason.code);
    expect(codes).toEqual(expect.arrayContaining(['heat', 'gaps', 'models-differ']));
  });

  it('never calls anything safe', () => {
    for (const gate of gates) {
      for (const sum of [0, 500, 900, 1500]) {
        const words = gateVerdict(question(sum, { gate })).reasons.map((reason) => reason.text);
        expect(words.join(' ')).not.toMatch(/\bsafe/i);
      }
    }
  });
});

describe('what jobs need', () => {
  it('rises from turning over stacking to mounting, then sanding and recoating', () => {
    const of = (gate: keyof typeof gateNeeds) => gateNeeds[gate].multiple;
    expect(of('turn')).toBeLessThanOrEqual(of('stack'));
    expect(of('stack')).toBeLessThanOrEqual(of('mount'));
    expect(of('mount')).toBeLessThanOrEqual(of('sand'));
    expect(of('mount')).toBeLessThanOrEqual(of('recoat'));
  });

  it('gives a probability that never falls along that order turned round', () => {
    for (let sum = 100; sum < 1500; sum += 100) {
      const order = ['turn', 'stack', 'mount', 'recoat'] as const;
      const p = order.map((gate) => gateVerdict(question(sum, { gate })).probability);
      for (let i = 1; i < p.length; i++) expect(p[i]).toBeLessThanOrEqual(p[i - 1] ?? 0);
    }
  });
});

describe('the stage of a coat', () => {
  it('passes through the stages of ASTM D1640 in their order', () => {
    const seen = new Set<string>();
    for (let sum = 0; sum < 2000; sum += 10) seen.add(stageOf(requirement, sum, 1, 0.9, 0));
    expect([...seen]).toEqual(['wet', 'set-to-touch', 'tack-free', 'dry-hard', 'dry-through']);
  });

  it('is dry-hard when recoating is ready', () => {
    expect(stageOf(requirement, 1079, 1, 0.9, 0)).toBe('tack-free');
    expect(stageOf(requirement, 1081, 1, 0.9, 0)).toBe('dry-hard');
  });
});
