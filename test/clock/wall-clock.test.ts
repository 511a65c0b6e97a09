import { describe, expect, it, vi } from 'vitest';
import { patienceMs } from '../../daemon/clock-trust.ts';
import { fakeComputer } from './fake-computer.ts';

const now = Date.UTC(2026, 4, 4, 8);
const minute = 60_000;
const hour = 60 * minute;
const known = { newestAt: now - minute, trustedBoot: null };

describe('a clock is not trusted while nothing speaks for it', () => {
  it('in 1970', () => {
    const clock = fakeComputer(60_000).clock();
    clock.learn(known);
    expect(clock.trusted()).toBe(false);
    expect(clock.doubts()[0]?.text).toMatch(/clock has not been set.*time service/);
  });

  it('behind what is on record, whoever has a battery clock', () => {
    const computer = fakeComputer(now - 8 * hour);
    computer.hasBatteryClock = true;
    const clock = computer.clock();
    clock.learn(known);
    expect(clock.trusted()).toBe(false);
  });

  it('hours behind but not behind what is on record: it goes on where it was switched off', () => {
    const clock = fakeComputer(now).clock();
    clock.learn(known);
    expect(clock.trusted()).toBe(false);
  });
});

describe('a clock is trusted', () => {
  it('when a time service has set it before the daemon came', () => {
    const computer = fakeComputer(now);
    computer.synchronised = true;
    const clock = computer.clock();
    clock.learn(known);
    expect(clock.trusted()).toBe(true);
    expect(clock.doubts()).toEqual([]);
  });

  it('when it is seen being set, at once, and says so', async () => {
    const computer = fakeComputer(60_000);
    const clock = computer.clock();
    clock.learn(known);
    const told = vi.fn();
    const watch = clock.watch(told);
    computer.pass(10 * minute);
    expect(clock.trusted()).toBe(false);
    computer.set(now - computer.wallMs);
    expect(clock.now()).toBe(now);
    expect(clock.trusted()).toBe(true);
    expect(told).toHaveBeenCalledTimes(1);
    watch.close();
  });

  it('when a time service says so later, without a step to be seen', async () => {
    vi.useFakeTimers();
    const computer = fakeComputer(now);
    const clock = computer.clock();
    clock.learn(known);
    const told = vi.fn();
    const watch = clock.watch(told);
    await vi.advanceTimersByTimeAsync(15_000);
    expect(told).not.toHaveBeenCalled();
    computer.synchronised = true;
    await vi.advanceTimersByTimeAsync(15_000);
    expect(told).toHaveBeenCalledTimes(1);
    watch.close();
    vi.useRealTimers();
  });

  it('when the computer has a battery clock', () => {
    const computer = fakeComputer(now);
    computer.hasBatteryClock = true;
    const clock = computer.clock();
    clock.learn(known);
    expect(clock.trusted()).toBe(true);
  });

  it('when it was trusted before in this running of the computer', () => {
    const clock = fakeComputer(now).clock();
    clock.learn({ ...known, trustedBoot: 'boot-1' });
    expect(clock.trusted()).toBe(true);
  });

  it('when nothing is on record', () => {
    const clock = fakeComputer(now).clock();
    clock.learn({ newestAt: null, trustedBoot: null });
    expect(clock.trusted()).toBe(true);
  });

  it('when nobody has set it for long, and it is not behind what is on record', () => {
    const computer = fakeComputer(now);
    const clock = computer.clock();
    clock.learn(known);
    computer.pass(patienceMs - 30_000);
    expect(clock.trusted()).toBe(false);
    computer.pass(30_000);
    expect(clock.trusted()).toBe(true);
  });
});

describe('a trusted clock that is set', () => {
  it.each([hour, -hour])('by %i ms is not followed, and that is said', (by) => {
    const computer = fakeComputer(now);
    computer.hasBatteryClock = true;
    const clock = computer.clock();
    clock.learn(known);
    computer.pass(minute);
    clock.now();
    computer.set(by);
    computer.pass(minute);
    expect(clock.now()).toBe(now + 2 * minute);
    expect(clock.trusted()).toBe(true);
    expect(clock.doubts()[0]?.text).toMatch(by > 0 ? /forward by 60 min/ : /back by 60 min/);
  });

  it.each([
    { how: 'by a mark that changed', mark: 1 },
    { how: 'by the kernel, a while after', mark: null },
  ])('is followed once a time service confirms it $how', async ({ mark }) => {
    vi.useFakeTimers();
    const computer = fakeComputer(now);
    computer.synchronised = true;
    computer.mark = mark;
    const clock = computer.clock();
    clock.learn(known);
    const watch = clock.watch(() => {});
    computer.set(hour);
    expect(clock.now()).toBe(now);
    await vi.advanceTimersByTimeAsync(12_000);
    // What the service said before the step says nothing about it.
    expect(clock.now()).toBe(now);
    computer.pass(12_000);
    if (mark !== null) computer.mark = mark + 1;
    await vi.advanceTimersByTimeAsync(12_000);
    expect(clock.now()).toBe(now + 12_000 + hour);
    expect(clock.doubts()).toEqual([]);
    watch.close();
    vi.useRealTimers();
  });

  it('for longer than a gap that counts is followed where nobody had vouched for it', () => {
    const computer = fakeComputer(now);
    const clock = computer.clock();
    clock.learn({ newestAt: null, trustedBoot: null });
    computer.set(5 * hour);
    expect(clock.now()).toBe(now + 5 * hour);
    expect(clock.doubts()).toEqual([]);
  });
});
