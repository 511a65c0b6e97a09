import { describe, expect, it } from 'vitest';
import { remarkKinds } from '../../daemon/contract/batch.ts';
import type { GateVerdict } from '../../daemon/contract/gate.ts';
import { gates } from '../../daemon/contract/gate.ts';
import { coatedArea } from '../../daemon/rules/coated-area.ts';
import { defaultPlans, furtherPlans, missingPlans } from '../../daemon/rules/coating-plan.ts';
import { lookIsDue, stepsOf } from '../../daemon/rules/coating-steps.ts';
import { dewHours } from '../../daemon/rules/dew-night.ts';
import type { CoatFact, RemarkFact } from '../../daemon/rules/facts.ts';
import { gateChanges } from '../../daemon/rules/gate-change.ts';
import { planHolds } from '../../daemon/rules/gate-limits.ts';
import { mountingIsOpen } from '../../daemon/rules/mounting.ts';
import { capacityWarnings, rackRoom } from '../../daemon/rules/rack-capacity.ts';
import { remarkCures, wetHolds } from '../../daemon/rules/remark-cure.ts';
import { learnedSpreading } from '../../daemon/rules/spreading-rate.ts';
import { timberCautions } from '../../daemon/rules/timber-cautions.ts';
import { tinDoubts } from '../../daemon/rules/tin-age.ts';
import { nothingSaidOfTimber, type TimberFact } from '../../daemon/rules/trade-facts.ts';
import { sunMayBeOn, wallReasons } from '../../daemon/rules/wall-sun.ts';

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;
const day1 = Date.UTC(2026, 4, 4, 6);
const codes = (reasons: readonly { code: string }[]) => reasons.map(({ code }) => code);

const coat = (given: Partial<CoatFact> = {}): CoatFact =>
  ({
    ...{ id: 'coat', batchId: 'batch', coat: 0, begunAt: null, finishedAt: day1 },
    ...{ mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 }, faces: ['face'] as const },
    ...{ usedL: null, colour: null, tin: null },
    ...given,
  }) as CoatFact;
const remark = (kind: RemarkFact['kind'], at: number): RemarkFact => ({
  ...{ id: kind, batchId: 'batch', kind, at, text: null },
});

describe('timber before it is coated', () => {
  // The usual caution on old paint; local rules come first. Common practice, no source.
  it.each(['painted', 'unknown'] as const)('is taken to hold lead when it is %s', (stateBefore) => {
    const cautions = timberCautions({ ...nothingSaidOfTimber, stateBefore }, true, day1, 14);
    expect(codes(cautions)).toEqual(['maybe-lead']);
    for (const word of ['test first', 'No dry sanding', 'burning', 'scraping', 'local rules']) {
      expect(cautions[0]?.text).toContain(word);
    }
  });

  // First coat within 2 weeks: Wood Handbook FPL-GTR-190, chapter 16.
  it('counts as weathered once it lay bare outdoors for more than two weeks', () => {
    const timber: TimberFact = {
      ...nothingSaidOfTimber,
      stateBefore: 'new',
      storedHow: 'bare-outdoors',
      knots: 'few',
      deliveredAt: day1,
    };
    expect(timberCautions(timber, false, day1 + 14 * dayMs, 14)).toEqual([]);
    const late = timberCautions(timber, false, day1 + 15 * dayMs, 14);
    expect(codes(late)).toEqual(['weathered-by-now']);
    expect(
      timberCautions({ ...timber, storedHow: 'indoors' }, false, day1 + 99 * dayMs, 14),
    ).toEqual([]);
  });

  it('wants its knots looked at, and boards on stickers turned', () => {
    const timber = { ...nothingSaidOfTimber, support: 'stickers' as const };
    expect(codes(timberCautions(timber, false, day1, 14))).toEqual([
      'knots-not-looked',
      'on-stickers',
    ]);
  });
});

describe('a rack', () => {
  it('takes running metres or boards, as was said of it, and no word where nothing was', () => {
    const lying = [{ count: 40, lengthMm: 4200 }];
    const rack = { name: 'North rack', capacityM: 168, capacityBoards: 40 };
    expect(capacityWarnings(rack, lying)).toEqual([]);
    expect(codes(capacityWarnings({ ...rack, capacityM: 167.9 }, lying))).toEqual([
      'rack-over-metres',
    ]);
    expect(codes(capacityWarnings({ ...rack, capacityBoards: 39 }, lying))).toEqual([
      'rack-over-boards',
    ]);
    expect(capacityWarnings({ name: 'Old rack' }, lying)).toEqual([]);
  });

  it('has room for metres or for boards of the length to come, and the tighter counts', () => {
    // Ten boards of 3 m lie there: 30 m.
    const lying = [{ count: 10, lengthMm: 3000 }];
    const free = (told: object, lengthM: number | null) => rackRoom(told, lying, lengthM).freeM;
    expect(free({ capacityM: 100 }, 4)).toBe(70);
    // Five more boards, of 4 m each.
    expect(rackRoom({ capacityBoards: 15 }, lying, 4)).toEqual({
      ...{ capacityM: 50, usedM: 30, freeM: 20 },
    });
    expect(free({ capacityM: 100, capacityBoards: 15 }, 4)).toBe(20);
    expect(free({ capacityM: 40, capacityBoards: 15 }, 4)).toBe(10);
    expect(free({ capacityBoards: 10 }, null)).toBe(0);
    expect(free({ capacityBoards: 15 }, null)).toBeNull();
    expect(free({ capacityM: 20 }, 4)).toBe(0);
    expect(free({}, 4)).toBeNull();
  });
});

describe('the area of a coat', () => {
  const boards = { count: 10, lengthMm: 4000, widthMm: 145, thicknessMm: 22 };
  it('is that of its faces, of the face only what the cover width shows', () => {
    // 10 × 4 m × 0.145 m, and with 120 mm showing 10 × 4 m × 0.12 m.
    expect(coatedArea(boards, ['face'], null)).toBeCloseTo(5.8, 9);
    expect(coatedArea(boards, ['face'], 120)).toBeCloseTo(4.8, 9);
    expect(coatedArea(boards, ['face', 'back'], 120)).toBeCloseTo(10.6, 9);
    expect(coatedArea(boards, ['back'], 120)).toBeCloseTo(5.8, 9);
    expect(coatedArea(boards, ['face'], 200)).toBeCloseTo(5.8, 9);
  });
});

describe('the spreading rate', () => {
  it('is the plan’s until something was used', () => {
    expect(learnedSpreading(8, [])).toEqual({ m2PerL: 8, coats: 0 });
  });
  it('weighs litres over areas, the plan counting as 25 m²', () => {
    // (25 + 75) m² over (25/8 + 75/6) L, by hand.
    const learned = learnedSpreading(8, [{ areaM2: 75, usedL: 12.5 }]);
    expect(learned.m2PerL).toBeCloseTo(100 / 15.625, 12);
    expect(learned.coats).toBe(1);
  });
  it('comes to what is really used, however it was planned', () => {
    const used = Array.from({ length: 400 }, () => ({ areaM2: 50, usedL: 10 }));
    expect(learnedSpreading(12, used).m2PerL).toBeCloseTo(5, 1);
  });
  it('leaves out a slip of the pen, and what says nothing', () => {
    const slips = [
      { areaM2: 50, usedL: 0.5 },
      { areaM2: 50, usedL: 500 },
      { areaM2: 0, usedL: 5 },
    ];
    expect(learnedSpreading(8, slips)).toEqual({ m2PerL: 8, coats: 0 });
  });
});

describe('the plans that come with the program', () => {
  it('are one for sawn and one for planed, without turpentine, and for resinous timber', () => {
    expect(
      [...defaultPlans, ...furtherPlans].map(({ use, surface }) => `${use} ${surface}`),
    ).toEqual([
      ...['usual sawn', 'usual planed', 'without-turpentine sawn', 'without-turpentine planed'],
      ...['resinous sawn', 'resinous planed'],
    ]);
    expect(defaultPlans[0]?.coats[0]?.spreadingM2PerL).toBe(8);
    for (const { use, coats } of furtherPlans) {
      if (use === 'without-turpentine') {
        expect(coats.every(({ mixture }) => mixture.turpentine === 0)).toBe(true);
      }
    }
  });
  it('are put in once', () => {
    const there = [...defaultPlans, ...furtherPlans];
    expect(missingPlans([])).toHaveLength(6);
    expect(missingPlans(there)).toEqual([]);
    expect(missingPlans(defaultPlans)).toHaveLength(4);
  });
  it('may make a job wait, as a maker’s sheet asks', () => {
    const planned = { gateLimits: { recoat: { leastHours: 24, leastDegreeHours: 500 } } };
    expect(codes(planHolds(planned, 'recoat', 23.9, 499))).toEqual([
      'plan-hours',
      'plan-degree-hours',
    ]);
    expect(planHolds(planned, 'recoat', 24, 500)).toEqual([]);
    expect(planHolds(planned, 'turn', 0, 0)).toEqual([]);
  });
});

describe('a coat in steps', () => {
  it('has the steps of its faces, the ends twice, and always the rags', () => {
    const all = ['edges', 'back', 'face', 'ends', 'ends-again', 'rags'];
    expect(stepsOf(['face', 'back', 'edges', 'ends'])).toEqual(all);
    expect(stepsOf(['face'])).toEqual(['face', 'rags']);
  });
  // 30 to 60 minutes: common practice, no source.
  it('is looked at from half an hour on, until somebody says what was seen', () => {
    const minute = hourMs / 60;
    expect(lookIsDue(coat(), [], day1 + 29 * minute)).toBe(false);
    expect(lookIsDue(coat(), [], day1 + 30 * minute)).toBe(true);
    const seen = [remark('sunk-in', day1 + 40 * minute)];
    expect(lookIsDue(coat(), seen, day1 + 45 * minute)).toBe(false);
    expect(lookIsDue(coat(), [remark('sunk-in', day1 - 1)], day1 + 45 * minute)).toBe(true);
    expect(lookIsDue(coat(), [], day1 + 5 * hourMs)).toBe(false);
  });
});

describe('a tin', () => {
  const tin = { name: 'Red 1', openedAt: day1, driers: 'as-sold' as const };
  it('is doubted when it has been open for long, or is poor in driers', () => {
    expect(tinDoubts(tin, day1 + 365 * dayMs)).toEqual([]);
    expect(codes(tinDoubts(tin, day1 + 366 * dayMs))).toEqual(['tin-old']);
    expect(codes(tinDoubts({ ...tin, driers: 'poor' }, day1))).toEqual(['tin-drier-poor']);
    expect(tinDoubts({ ...tin, openedAt: null }, day1 + 999 * dayMs)).toEqual([]);
  });
});

describe('what was seen', () => {
  const cures = (kind: (typeof remarkKinds)[number]) => remarkCures(kind).map(({ text }) => text);
  it('has a cure for every kind that needs one', () => {
    for (const kind of remarkKinds) {
      const none = kind === 'other' || kind === 'looked-fine';
      expect(cures(kind).length > 0, kind).toBe(!none);
      expect(cures(kind).join(' '), kind).not.toMatch(/\bsafe/i);
    }
    expect(cures('wrinkled').join(' ')).toMatch(/wait.*scrape.*thinner/is);
  });
  it('holds a coat that got wet until somebody has looked', () => {
    const wet = remark('dew-night', day1 + 8 * hourMs);
    expect(codes(wetHolds(coat(), [wet]))).toEqual(['was-wet']);
    expect(wetHolds(coat(), [wet, remark('looked-fine', day1 + 9 * hourMs)])).toEqual([]);
    expect(codes(wetHolds(coat(), [remark('dull', day1 + hourMs), wet]))).toEqual(['was-wet']);
    expect(wetHolds(coat({ finishedAt: day1 + dayMs }), [wet])).toEqual([]);
  });
});

describe('a night of dew', () => {
  const hours = (air: readonly [tempC: number, rhPercent: number][]) =>
    air.map(([tempC, rhPercent], i) => ({
      ...{ at: day1 + i * hourMs, tempC, rhPercent, surfaceTempC: null },
    }));
  const open = { kind: 'wall', exposure: 'open' } as const;
  const inside = { kind: 'rack', exposure: null } as const;

  it('wets boards under the open sky in still damp air, and not those indoors', () => {
    // At 10 °C and 95 % the dew point is 9.2 °C; 2 K of cooling under the sky goes below it.
    const damp = hours([
      [10, 95],
      [10, 95],
      [10, 95],
    ]);
    expect(dewHours(damp, open, 22)).toHaveLength(3);
    expect(dewHours(damp, { kind: 'wall', exposure: 'under-eaves' }, 22)).toEqual([]);
    expect(dewHours(damp, inside, 22)).toEqual([]);
  });
  it('wets cold boards when warm damp air comes in the morning', () => {
    const thaw = hours([
      [2, 80],
      [2, 80],
      [12, 90],
      [13, 90],
    ]);
    expect(dewHours(thaw, inside, 22).length).toBeGreaterThan(0);
  });
  it('is none in dry air, and goes by the board where it is measured', () => {
    expect(
      dewHours(
        hours([
          [15, 60],
          [10, 70],
        ]),
        open,
        22,
      ),
    ).toEqual([]);
    const measured = hours([[10, 95]]).map((one) => ({ ...one, surfaceTempC: 12 }));
    expect(dewHours(measured, open, 22)).toEqual([]);
  });
});

describe('a wall', () => {
  // East in the morning, south at noon, west in the afternoon: the sun’s daily round.
  it.each([
    ['east', 8, true],
    ['east', 15, false],
    ['south', 12, true],
    ['west', 9, false],
    ['west', 16, true],
    ['north', 12, false],
  ] as const)('facing %s at %i h: sun %s', (facing, hour, sunny) => {
    expect(sunMayBeOn({ facing, exposure: 'open' }, hour)).toBe(sunny);
  });
  it('south of the equator has its noon sun in the north', () => {
    expect(sunMayBeOn({ facing: 'north', exposure: 'open' }, 12, 'south')).toBe(true);
    expect(sunMayBeOn({ facing: 'south', exposure: 'open' }, 12, 'south')).toBe(false);
  });
  it('says to follow the shade and to stop before evening dew', () => {
    const wall = { name: 'South wall', facing: 'south', exposure: 'open' } as const;
    const noon = wallReasons(wall, 12);
    expect(codes(noon)).toEqual(['wall-sun', 'wall-evening', 'wall-rain']);
    expect(noon[0]?.text).toContain('follow the shade');
    expect(noon[1]?.text).toContain('before evening dew');
    expect(wallReasons(wall, 18.5)[1]?.text).toContain('Leave it for tomorrow');
    const unknown = wallReasons({ ...wall, facing: null }, 12);
    expect(codes(unknown)[0]).toBe('wall-shade');
  });
  it('has open lines brought up the same day, and no more after three', () => {
    expect(mountingIsOpen(day1, 3, day1 + 3 * hourMs)).toBe(false);
    expect(mountingIsOpen(day1, 3, day1 + 5 * hourMs)).toBe(true);
    expect(mountingIsOpen(day1, 4, day1 + 5 * hourMs)).toBe(false);
    expect(mountingIsOpen(day1, 0, day1 + 4 * dayMs)).toBe(false);
  });
});

describe('what a test changed', () => {
  const verdict = (given: Partial<GateVerdict>): GateVerdict => ({
    ...{ verdict: 'wait', probability: 0.3, early: null, late: null, reasons: [] },
    likely: '2026-05-07T12:00:00.000Z',
    requiredDegreeHours: { early: 1, likely: 2, late: 3 },
    ...given,
  });
  const all = (one: GateVerdict) =>
    Object.fromEntries(gates.map((gate) => [gate, one])) as Record<
      (typeof gates)[number],
      GateVerdict
    >;

  it('is told where a verdict, a chance or a time moved, and not otherwise', () => {
    const before = all(verdict({}));
    expect(gateChanges(before, before)).toEqual([]);
    const later = verdict({ likely: '2026-05-07T18:00:00.000Z' });
    const changed = gateChanges(before, { ...before, recoat: later });
    expect(changed).toMatchObject([{ gate: 'recoat', after: { likely: later.likely } }]);
    const soon = verdict({ likely: '2026-05-07T12:10:00.000Z', probability: 0.31 });
    expect(gateChanges(before, { ...before, sand: soon })).toEqual([]);
  });
});
