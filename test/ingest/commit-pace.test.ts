import { describe, expect, it } from 'vitest';
import { commitPace } from '../../daemon/ingest/commit-pace.ts';

/** Somebody who publishes, on a clock in whole milliseconds. */
interface Publisher {
  name: string;
  /** How many messages it sends at a moment, when so many of its own are not answered. */
  sends(at: number, unanswered: number): number;
  answered?(at: number): void;
}

/** Sends at its own pace, whether it is answered or not. */
const steady = (name: string, everyMs: number, phaseMs = 0): Publisher => ({
  name,
  sends: (at) => ((at - phaseMs) % everyMs === 0 ? 1 : 0),
});

/** Sends as much as it may have under way, a while after each answer. */
function replay(name: string, window: number, roundTripMs: number, from = 0): Publisher {
  let readyAt = from;
  return {
    name,
    sends: (at, unanswered) => (at >= readyAt ? window - unanswered : 0),
    answered(at) {
      readyAt = at + roundTripMs;
    },
  };
}

/**
 * Lets publishers send for a while.
 *
 * @param commitMs - how long a commit takes
 * @returns how many commits there were in the last half, and what each had answered by the end
 */
function run(
  publishers: Publisher[],
  forMs: number,
  { spacingMs = 5000, groupSize = 400, commitMs = 10 } = {},
) {
  const pace = commitPace({ spacingMs, groupSize });
  const waiting: { name: string; at: number }[] = [];
  const answered = new Map(publishers.map(({ name }) => [name, 0]));
  const unanswered = new Map(publishers.map(({ name }) => [name, 0]));
  let running: { group: { name: string; at: number }[]; until: number } | null = null;
  let commits = 0;
  let longestMs = 0;
  for (let at = 0; at < forMs; at++) {
    if (running && at >= running.until) {
      const group = new Map<string, number>();
      for (const { name, at: sentAt } of running.group) {
        group.set(name, (group.get(name) ?? 0) + 1);
        longestMs = Math.max(longestMs, at - sentAt);
      }
      running = null;
      pace.done(group, at);
      for (const publisher of publishers) {
        const count = group.get(publisher.name) ?? 0;
        if (count === 0) continue;
        answered.set(publisher.name, (answered.get(publisher.name) ?? 0) + count);
        unanswered.set(publisher.name, (unanswered.get(publisher.name) ?? 0) - count);
        publisher.answered?.(at);
      }
    }
    for (const { name, sends } of publishers) {
      const count = sends(at, unanswered.get(name) ?? 0);
      unanswered.set(name, (unanswered.get(name) ?? 0) + count);
      for (let index = 0; index < count; index++) {
        waiting.push({ name, at });
        pace.arrived(name, at);
      }
    }
    if (!running && waiting.length > 0 && pace.wait(waiting.length, at) === 0) {
      pace.begun(at);
      running = { group: waiting.splice(0), until: at + commitMs };
      if (at >= forMs / 2) commits++;
    }
  }
  return { commits, longestMs, answered: (name: string) => answered.get(name) ?? 0 };
}

const minute = 60_000;
const sensors = (count: number, everyMs: number) =>
  Array.from({ length: count }, (_, index) =>
    steady(`node-${index}`, everyMs, Math.round((index * 997) % everyMs)),
  );

describe('under steady flow commits are spaced, and nobody waits longer than that', () => {
  it.each([
    { flow: 'one reading a second', publishers: [steady('node', 1000)] },
    { flow: '20 a second from 20 nodes', publishers: sensors(20, 1000) },
    { flow: '20 a second from one bridge', publishers: [steady('bridge', 50)] },
    { flow: '70 a second from one bridge', publishers: [steady('bridge', 14)] },
    { flow: '60 nodes once a minute', publishers: sensors(60, minute) },
  ])('$flow', ({ publishers }) => {
    const { commits, longestMs } = run(publishers, 2 * minute);
    // One in 5 s is 12 in the last minute; a few may be spent on finding out who waits.
    expect(commits).toBeGreaterThanOrEqual(11);
    expect(commits).toBeLessThanOrEqual(20);
    expect(longestMs).toBeLessThanOrEqual(5000 + 2 * 10);
  });

  it.each([
    { nodes: 1, everyMs: 300 },
    { nodes: 1, everyMs: 1000 },
    { nodes: 2, everyMs: 1000 },
    { nodes: 5, everyMs: 500 },
    { nodes: 20, everyMs: 2000 },
    { nodes: 20, everyMs: 2500 },
  ])('$nodes, each every $everyMs ms, in step with the commits', ({ nodes, everyMs }) => {
    const evenly = Array.from({ length: nodes }, (_, index) =>
      steady(`node-${index}`, everyMs, Math.round((index * everyMs) / nodes)),
    );
    // However long a commit takes: some message then comes right after it, and waits for nothing.
    for (const commitMs of [2, 10, 40]) {
      const { commits } = run(evenly, 8 * minute, { commitMs });
      expect(commits).toBeLessThanOrEqual(4 * 12 + 2);
    }
  });

  it('enough readings that wait are not put off', () => {
    const { commits } = run([steady('bridge', 14)], 2 * minute, { groupSize: 50 });
    expect(commits).toBeGreaterThan(70);
  });
});

describe('bursts and replays are not slowed', () => {
  it.each([
    { who: 'a node that sends one, waits for its answer, and sends the next', window: 1, trip: 5 },
    { who: 'the same by radio', window: 1, trip: 50 },
    { who: 'a recording, 40 under way', window: 40, trip: 5 },
  ])('$who', ({ window, trip }) => {
    const alone = run([replay('node', window, trip)], minute);
    const unspaced = run([replay('node', window, trip)], minute, { spacingMs: 0 });
    expect(alone.answered('node')).toBeGreaterThan(0.9 * unspaced.answered('node'));
  });

  it('also beside steady flow, and it is spaced again when the replay is over', () => {
    const beside = run([replay('late', 1, 20, 20_000), ...sensors(20, 1000)], 2 * minute);
    const unspaced = run([replay('late', 1, 20, 20_000)], 2 * minute, { spacingMs: 0 });
    expect(beside.answered('late')).toBeGreaterThan(0.78 * unspaced.answered('late'));
    const ended = replay('late', 1, 20);
    const sends = (at: number, unanswered: number) =>
      at < 20_000 ? ended.sends(at, unanswered) : 0;
    const { commits } = run([{ ...ended, sends }, ...sensors(20, 1000)], 2 * minute);
    expect(commits).toBeLessThanOrEqual(20);
  });

  it('whoever pauses a little after each answer waits a fraction of a second, not five', () => {
    const polite = run([replay('script', 1, 100, 10_000)], minute);
    expect(polite.longestMs).toBeLessThanOrEqual(300);
    const beside = run([replay('script', 1, 100, 10_000), ...sensors(20, 1000)], minute);
    expect(beside.longestMs).toBeLessThanOrEqual(5000 + 2 * 10);
    expect(beside.answered('script')).toBeGreaterThan(90);
  });

  it.each([700, 900, 1200, 1500])(
    'whoever a busy computer heard only every %i ms for a while is not put off ever longer since',
    (everyMs) => {
      const sensor = replay('sensor', 1, 20);
      const isHeard = (at: number) => at < 5000 || at >= 9000 || at % everyMs === 0;
      const sends = (at: number, unanswered: number) =>
        isHeard(at) ? sensor.sends(at, unanswered) : 0;
      const before = run([replay('sensor', 1, 20)], 5000).answered('sensor');
      const { longestMs, answered } = run([{ ...sensor, sends }], 20_000);
      expect(longestMs).toBeLessThan(4000);
      // It goes on as before, and not as one that speaks every few seconds.
      expect(answered('sensor')).toBeGreaterThan(2 * before);
    },
  );

  it('nor does a recording whose window is read in uneven parts, now 170, now 30', () => {
    let readyAt = 0;
    let part = 0;
    const uneven: Publisher = {
      name: 'recording',
      sends: (at, unanswered) =>
        at < readyAt || unanswered > 0 ? 0 : ([170, 30][part++ % 2] ?? 0),
      answered: (at) => {
        readyAt = at + 5;
      },
    };
    // Spaced by 200 ms at every second part it would come to a seventh of what it is unspaced.
    expect(run([uneven], minute).answered('recording')).toBeGreaterThan(0.5 * 200 * (minute / 32));
  });

  it('nor does the small part of a window wait that comes after its great part was answered', () => {
    const pace = commitPace({ spacingMs: 5000, groupSize: 400 });
    const arrive = (count: number, at: number) => {
      for (let index = 0; index < count; index++) pace.arrived('recording', at);
      return pace.wait(count, at);
    };
    const commit = (count: number, from: number) => {
      pace.begun(from);
      pace.done(new Map([['recording', count]]), from + 10);
    };
    expect(arrive(30, 0)).toBe(0);
    commit(30, 0);
    expect(arrive(170, 12)).toBe(0);
    commit(170, 12);
    expect(arrive(30, 30)).toBe(0);
    // What comes of nobody’s waiting is spaced as ever.
    commit(30, 30);
    expect(arrive(1, 105)).toBeGreaterThan(0);
  });

  it('nor do senders that come one after the other, each waiting for the one before', () => {
    let at = 0;
    let readyAt = 0;
    let left = 1;
    const relay = Array.from({ length: 200 }, (_, index) => ({
      name: `sender-${index}`,
      sends: (now: number) => {
        if (now < readyAt || left !== 1 || at !== index) return 0;
        left = 0;
        return 1;
      },
      answered: (now: number) => {
        at++;
        left = 1;
        readyAt = now + 15;
      },
    }));
    const { answered, longestMs } = run(relay, 15_000);
    expect(answered('sender-199')).toBe(1);
    expect(longestMs).toBeLessThanOrEqual(300);
  });

  it('a first reading after a quiet while is committed at once', () => {
    expect(run([steady('node', 20_000)], minute).longestMs).toBe(10);
  });
});
