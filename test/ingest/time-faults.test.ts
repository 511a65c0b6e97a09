import { afterEach, describe, expect, it } from 'vitest';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';
import { type FakeComputer, fakeComputer } from '../clock/fake-computer.ts';
import { hour, minute, type ShedOnAClock, shedOnAClock } from './shed-on-a-clock.ts';

/*
 * Each test injects one fault of time and asks for the sum that an unfaulted clock gives: degree-hours
 * over 5 °C, so that an hour at 20 °C is 15 and one at 11 °C is 6. Reckoned by hand.
 */
const start = Date.UTC(2026, 4, 4, 8);
const perHourAt20 = 15;

let shed: ShedOnAClock | null = null;
afterEach(() => shed?.close());

function shedOn(computer: FakeComputer): ShedOnAClock {
  shed = shedOnAClock(computer, start);
  return shed;
}

/** A computer with a battery clock. */
function goodComputer(): FakeComputer {
  const computer = fakeComputer(start);
  computer.hasBatteryClock = true;
  return computer;
}

/** A reading at once, and then one a minute for as long, without times of their own. */
async function sendEachMinute(of: ShedOnAClock, computer: FakeComputer, forMs: number) {
  for (let ms = 0; ms < forMs; ms += minute) {
    computer.pass(minute);
    await of.send(20);
  }
}

const ascending = (times: readonly number[]) =>
  times.every((at, index) => index === 0 || at > (times[index - 1] ?? 0));

describe('the clock of the computer is set while readings without times come in', () => {
  it.each([
    { fault: 'an hour forward', steps: [hour] },
    { fault: 'an hour back', steps: [-hour] },
    { fault: 'an hour forward and back again', steps: [hour, -hour] },
    { fault: 'an hour back and forward again', steps: [-hour, hour] },
    { fault: 'half an hour forward, twice', steps: [hour / 2, hour / 2] },
  ])('$fault: the sum is that of the hours that went by', async ({ steps }) => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await of.send(20);
    await sendEachMinute(of, computer, hour);
    for (const step of steps) {
      computer.set(step);
      await sendEachMinute(of, computer, hour);
    }
    expect(of.degreeHours()).toBeCloseTo((1 + steps.length) * perHourAt20, 9);
    expect(ascending(of.times())).toBe(true);
    expect(of.counts().duplicates).toBe(0);
    expect(of.times()).toHaveLength(2 + 60 * (1 + steps.length));
  });

  it('back, and a time service says that this is right: in order, and nothing twice', async () => {
    const computer = goodComputer();
    computer.synchronised = true;
    const of = shedOn(computer);
    const watch = of.clock().watch(() => {});
    await of.send(20);
    await sendEachMinute(of, computer, hour);
    computer.set(-10 * minute);
    await sendEachMinute(of, computer, hour);
    watch.close();
    expect(ascending(of.times())).toBe(true);
    expect(of.counts()).toMatchObject({ duplicates: 0, accepted: 121 });
    expect(of.degreeHours()).toBeLessThanOrEqual(2 * perHourAt20 + 1e-9);
  });
});

describe('leap seconds and daylight saving', () => {
  it('a second that is smeared over a day adds or takes no more than that second', async () => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await of.send(20);
    for (let ms = 0; ms < 24 * hour; ms += 10 * minute) {
      computer.pass(10 * minute);
      computer.set(-1000 / 144);
      await of.send(20);
    }
    expect(Math.abs(of.degreeHours() - 24 * perHourAt20)).toBeLessThan(
      (1 / 3600) * perHourAt20 * 2,
    );
  });

  it('a second that is told twice bends nothing', async () => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await of.send(20);
    await sendEachMinute(of, computer, hour);
    computer.set(-1000);
    await sendEachMinute(of, computer, hour);
    expect(Math.abs(of.degreeHours() - 2 * perHourAt20)).toBeLessThan((1 / 3600) * perHourAt20 * 2);
    expect(ascending(of.times())).toBe(true);
  });

  it.each([
    // European Union, Directive 2000/84/EC: last Sundays of March and October, at 01:00 UTC.
    {
      change: 'to winter time',
      from: Date.UTC(2026, 9, 24, 23),
      before: '+02:00',
      after: '+01:00',
    },
    {
      change: 'to summer time',
      from: Date.UTC(2026, 2, 28, 23),
      before: '+01:00',
      after: '+02:00',
    },
  ])(
    '$change: local times with their offset are evenly spaced',
    async ({ from, before, after }) => {
      const computer = fakeComputer(from);
      computer.hasBatteryClock = true;
      shed = shedOnAClock(computer, from);
      const zone = process.env.TZ;
      process.env.TZ = 'Europe/Stockholm';
      try {
        for (let at = from; at <= from + 4 * hour; at += 10 * minute) {
          const offset = at < from + 2 * hour ? before : after;
          const local = new Date(at + Number(offset.slice(1, 3)) * hour).toISOString();
          await shed.send(20, local.replace('Z', offset));
          computer.pass(10 * minute);
        }
      } finally {
        if (zone === undefined) delete process.env.TZ;
        else process.env.TZ = zone;
      }
      expect(shed.degreeHours()).toBeCloseTo(4 * perHourAt20, 9);
      expect(shed.counts()).toMatchObject({ duplicates: 0, flagged: 0 });
    },
  );
});

describe('a sensor whose own clock is an hour wrong', () => {
  async function sendWithTimes(of: ShedOnAClock, computer: FakeComputer, offMs: number) {
    for (let ms = 0; ms < hour; ms += minute) {
      computer.pass(minute);
      await of.send(20, computer.wallMs + offMs);
    }
  }

  it('ahead: its readings are dated by their arrival, flagged, and it is named', async () => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await of.send(20, computer.wallMs);
    await sendWithTimes(of, computer, hour);
    expect(of.degreeHours()).toBeCloseTo(perHourAt20, 9);
    expect(of.flags().slice(-60)).toEqual(Array(60).fill(readingFlagBits['time-replaced']));
    expect(of.oddClocks()).toEqual([{ sensor: 'node', offMs: hour }]);
  });

  it('behind: it keeps its times, is named, and an hour is an hour', async () => {
    const computer = goodComputer();
    computer.pass(hour);
    const of = shedOn(computer);
    await of.send(20, computer.wallMs - hour);
    await sendWithTimes(of, computer, -hour);
    expect(of.degreeHours()).toBeCloseTo(perHourAt20, 9);
    expect(of.oddClocks()).toEqual([{ sensor: 'node', offMs: -hour }]);
  });

  it('set back by an hour on the way: no hour counts twice, and no more than that one is lost', async () => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await of.send(20, computer.wallMs);
    await sendWithTimes(of, computer, 0);
    await sendWithTimes(of, computer, 0);
    await sendWithTimes(of, computer, -hour);
    await sendWithTimes(of, computer, -hour);
    expect(of.degreeHours()).toBeCloseTo(3 * perHourAt20, 9);
    expect(of.oddClocks()).toEqual([{ sensor: 'node', offMs: -hour }]);
  });

  it('a backlog of an hour that is caught up with is no wrong clock', async () => {
    const computer = goodComputer();
    computer.pass(hour);
    const of = shedOn(computer);
    for (let ms = 0; ms <= hour; ms += minute) {
      computer.pass(1000);
      await of.send(20, start + ms);
    }
    expect(of.oddClocks()).toEqual([]);
    expect(of.degreeHours()).toBeCloseTo(perHourAt20, 9);
  });

  it('a recording of last year is no wrong clock, however slowly it comes', async () => {
    const computer = goodComputer();
    const of = shedOn(computer);
    await sendWithTimes(of, computer, -365 * 24 * hour);
    expect(of.oddClocks()).toEqual([]);
  });
});

describe('a computer without a battery clock', () => {
  /** Stands still for so long, and goes on with a clock that has not been set. */
  async function afterPowerCut(wallMs: number) {
    const computer = fakeComputer(start);
    computer.synchronised = true;
    const of = shedOn(computer);
    await of.send(20);
    await sendEachMinute(of, computer, hour);
    computer.synchronised = false;
    computer.restart('boot-2', wallMs);
    of.restart();
    return { computer, of };
  }

  it.each([
    { fault: 'in 1970', wall: 60_000 },
    { fault: 'where it was switched off, two hours ago', wall: start + hour + 1000 },
  ])('starts $fault: what came before its clock was set takes its place', async ({ wall }) => {
    const { computer, of } = await afterPowerCut(wall);
    await of.send(20);
    await sendEachMinute(of, computer, 20 * minute);
    expect(of.waiting()).toBe(21);
    expect(of.degreeHours()).toBeCloseTo(perHourAt20, 9);
    // Off for less than the gap that counts; on for 20 minutes when its clock is set.
    computer.set(start + 4 * hour - computer.wallMs);
    expect(await of.place()).toBe(21);
    expect(of.waiting()).toBe(0);
    expect(of.degreeHours()).toBeCloseTo(4 * perHourAt20, 9);
    expect(of.times().at(-1)).toBe(start + 4 * hour);
    expect(of.times().at(-21)).toBe(start + 4 * hour - 20 * minute);
    expect(ascending(of.times())).toBe(true);
    await sendEachMinute(of, computer, hour);
    expect(of.degreeHours()).toBeCloseTo(5 * perHourAt20, 9);
    of.restart();
    expect(of.degreeHours()).toBeCloseTo(5 * perHourAt20, 9);
  });

  it('readings with times that it cannot judge wait as well, and keep their times', async () => {
    const { computer, of } = await afterPowerCut(60_000);
    computer.pass(minute);
    await of.send(11, start + 3 * hour);
    computer.pass(1000);
    await of.send(20, Date.UTC(2100, 0, 1));
    computer.set(start + 4 * hour - computer.wallMs);
    expect(await of.place()).toBe(2);
    expect(of.times().slice(-2)).toEqual([start + 3 * hour, start + 4 * hour]);
    expect(of.flags().slice(-2)).toEqual([
      readingFlagBits['clock-untrusted'],
      readingFlagBits['clock-untrusted'] | readingFlagBits['time-replaced'],
    ]);
  });

  it('what waits outlives a restart of the daemon', async () => {
    const { computer, of } = await afterPowerCut(60_000);
    await of.send(20);
    computer.pass(30 * minute);
    of.restart();
    await of.send(20);
    computer.pass(30 * minute);
    computer.set(start + 4 * hour - computer.wallMs);
    expect(await of.place()).toBe(2);
    expect(of.times().slice(-2)).toEqual([start + 3 * hour, start + 3.5 * hour]);
  });

  it('what an earlier start left waiting is kept, with an unknown time, and counts for nothing', async () => {
    const { computer, of } = await afterPowerCut(60_000);
    await of.send(20);
    computer.pass(10 * minute);
    await of.send(20);
    computer.restart('boot-3', 60_000);
    of.restart();
    await of.send(20);
    computer.set(start + 4 * hour - computer.wallMs);
    expect(await of.place()).toBe(3);
    const unknown = readingFlagBits['clock-untrusted'] | readingFlagBits['time-unknown'];
    expect(of.flags().slice(-3)).toEqual([unknown, unknown, readingFlagBits['clock-untrusted']]);
    const [first = 0, second = 0, third = 0] = of.times().slice(-3);
    expect(second - first).toBe(10 * minute);
    expect(third).toBe(start + 4 * hour);
    expect(second).toBeLessThan(third - 20_000);
    // One hour, and the gap of three hours, which still counts.
    expect(of.degreeHours()).toBeCloseTo(4 * perHourAt20, 9);
  });

  it('places late what belongs between readings that came with their own times', async () => {
    const { computer, of } = await afterPowerCut(60_000);
    const bootAt = start + 4 * hour - 2 * hour - 20_000;
    await of.send(20);
    computer.pass(hour);
    await of.send(11);
    computer.pass(hour);
    // Another node knows the time, and is heard before the clock is set.
    of.site.send([{ sensor: 'node', at: start + 4 * hour, value: 20 }]);
    expect(of.degreeHours()).toBeCloseTo(4 * perHourAt20, 9);
    computer.set(start + 4 * hour - computer.wallMs);
    await of.place();
    expect(of.times().slice(-3)).toEqual([
      bootAt + 20_000,
      bootAt + 20_000 + hour,
      start + 4 * hour,
    ]);
    // Two hours at 20 °C, and two between 20 and 11 °C: 15.5 °C in the mean.
    expect(of.degreeHours()).toBeCloseTo(2 * perHourAt20 + 2 * 10.5, 9);
  });
});
