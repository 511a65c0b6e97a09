import { describe, expect, it, vi } from 'vitest';
import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import type { ReadingGroup } from '../../daemon/rules/facts.ts';
import { holdTheClock, reading, turn } from './still-clock.ts';

/** One commit that the test ends when it likes. */
interface Held {
  group: ReadingGroup;
  done(): void;
  fail(cause: Error): void;
}

holdTheClock();

/** A group commit over a store that holds every commit until it is told. */
function heldStore(options: { spacingMs?: number; groupSize?: number } = {}) {
  const commits: Held[] = [];
  const acknowledged: string[] = [];
  const events: string[] = [];
  const failures: string[] = [];
  let clock = 1_000;
  const queue = groupCommit<number>({
    commit: (group) =>
      new Promise((resolve, reject) => {
        commits.push({
          group,
          done: () => resolve(group.readings.length),
          fail: (cause) => reject(cause),
        });
      }),
    committed: (count) => events.push(`committed ${count}`),
    failed: (cause) => failures.push(cause.message),
    now: () => clock++,
    spacingMs: options.spacingMs ?? 100,
    groupSize: options.groupSize ?? 3,
  });
  const add = (name: string, readings = 1) =>
    queue.add(
      Array.from({ length: readings }, (_, index) => reading(index)),
      [],
      (failure) => {
        acknowledged.push(failure ? `${name} refused` : name);
        events.push(name);
      },
    );
  const sizes = () => commits.map(({ group }) => group.readings.length);
  const finish = async (index: number) => {
    commits[index]?.done();
    await vi.advanceTimersByTimeAsync(0);
  };
  return { queue, commits, acknowledged, events, failures, add, sizes, finish };
}

/** Longer than anyone takes who was waiting for the answer to the last message. */
const aWhile = () => vi.advanceTimersByTimeAsync(80);

describe('a reading is acknowledged once it is on disk', () => {
  it('never while its commit runs', async () => {
    const { add, acknowledged, finish } = heldStore();
    add('a');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(acknowledged).toEqual([]);
    await finish(0);
    expect(acknowledged).toEqual(['a']);
  });

  it('in the order of arrival, within a group and from group to group', async () => {
    const { add, acknowledged, finish, sizes } = heldStore();
    for (const name of ['a', 'b', 'c', 'd', 'e']) add(name);
    await turn();
    for (const name of ['f', 'g', 'h']) add(name);
    await finish(0);
    await turn();
    await finish(1);
    expect(acknowledged).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']);
    expect(sizes()).toEqual([5, 3]);
  });

  it('after the monitor has heard of it, so that what is acknowledged is also reckoned with', async () => {
    const { add, events, finish } = heldStore();
    add('a', 2);
    await turn();
    await finish(0);
    expect(events).toEqual(['committed 2', 'a']);
  });

  it('also when the one who was told of the commit broke: it is on disk all the same', async () => {
    const acknowledged: (Error | null)[] = [];
    const failures: string[] = [];
    const queue = groupCommit<null>({
      commit: async () => null,
      committed() {
        throw new Error('the monitor broke');
      },
      failed: (cause) => failures.push(cause.message),
      now: () => 0,
      spacingMs: 0,
      groupSize: 10,
    });
    queue.add([reading(1)], [], (failure) => acknowledged.push(failure));
    await turn();
    expect(acknowledged).toEqual([null]);
    expect(failures).toEqual([expect.stringContaining('the monitor broke')]);
  });
});

describe('commits are grouped', () => {
  it('after a quiet while the first message is committed at once', async () => {
    const { add, sizes, finish } = heldStore({ spacingMs: 5000 });
    add('a');
    await turn();
    expect(sizes()).toEqual([1]);
    await finish(0);
    await vi.advanceTimersByTimeAsync(5000);
    add('b');
    await turn();
    expect(sizes()).toEqual([1, 1]);
  });

  it('what arrives while a commit runs makes the next group', async () => {
    const { add, sizes, finish } = heldStore();
    add('a');
    await turn();
    for (let i = 0; i < 50; i++) add(`later ${i}`);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(sizes()).toEqual([1]);
    await finish(0);
    await turn();
    expect(sizes()).toEqual([1, 50]);
  });

  it('under steady flow they are spaced', async () => {
    const { add, sizes, finish } = heldStore({ spacingMs: 200, groupSize: 1000 });
    add('a');
    await turn();
    await finish(0);
    await aWhile();
    for (let i = 0; i < 11; i++) {
      add(`steady ${i}`);
      await vi.advanceTimersByTimeAsync(10);
    }
    expect(sizes()).toEqual([1]);
    await vi.advanceTimersByTimeAsync(10);
    expect(sizes()).toEqual([1, 11]);
  });

  it('a full group is not put off', async () => {
    const { add, sizes, finish } = heldStore({ spacingMs: 5000, groupSize: 3 });
    add('a');
    await turn();
    await finish(0);
    await aWhile();
    add('b');
    add('c');
    await turn();
    expect(sizes()).toEqual([1]);
    add('d');
    await turn();
    expect(sizes()).toEqual([1, 3]);
  });

  it('refused messages count towards a full group, and are committed with it', async () => {
    const { queue, commits, add, finish } = heldStore({ spacingMs: 5000, groupSize: 2 });
    add('a');
    await turn();
    await finish(0);
    await aWhile();
    const refusal = {
      at: 5,
      topic: 't',
      code: 'payload-empty',
      detail: '',
      payloadStart: '',
      payloadBytes: 0,
    };
    queue.add([], [refusal, refusal], () => {});
    await turn();
    expect(commits[1]?.group.refused).toHaveLength(2);
  });

  it('a group carries the time at which it was closed', async () => {
    const { add, commits } = heldStore();
    add('a');
    await turn();
    expect(commits[0]?.group.arrivedAt).toBe(1_000);
  });
});

describe('a commit that fails', () => {
  it('refuses all of its group, says so once, and goes on with the next', async () => {
    const { add, commits, acknowledged, failures, finish } = heldStore();
    add('a');
    add('b');
    await turn();
    add('c');
    commits[0]?.fail(new Error('the disk is full'));
    await turn();
    expect(acknowledged).toEqual(['a refused', 'b refused']);
    expect(failures).toEqual(['the disk is full']);
    await vi.advanceTimersByTimeAsync(100);
    await finish(1);
    expect(acknowledged).toEqual(['a refused', 'b refused', 'c']);
  });
});

describe('draining', () => {
  it('waits for what runs and for what waits', async () => {
    const { queue, add, finish } = heldStore({ spacingMs: 100, groupSize: 10 });
    let drained = false;
    add('a');
    await turn();
    add('b');
    void queue.drained().then(() => {
      drained = true;
    });
    await finish(0);
    expect(drained).toBe(false);
    await vi.advanceTimersByTimeAsync(100);
    await finish(1);
    expect(drained).toBe(true);
  });

  it('is there at once when nothing is under way', async () => {
    await heldStore().queue.drained();
  });

  it('also ends when the last commit failed', async () => {
    const { queue, add, commits } = heldStore();
    add('a');
    await turn();
    const drained = queue.drained();
    commits[0]?.fail(new Error('gone'));
    await drained;
  });
});
