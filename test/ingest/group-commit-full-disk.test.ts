import { describe, expect, it, vi } from 'vitest';
import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import { holdTheClock, reading, turn } from './still-clock.ts';

holdTheClock();

/** A store on a disk that the test fills and frees. */
function fillingDisk(options: { longestHoldMs?: number } = {}) {
  let isFull = false;
  let tries = 0;
  const stored: number[] = [];
  const acknowledged: string[] = [];
  const letGo: string[] = [];
  const told: boolean[] = [];
  const failures: string[] = [];
  const queue = groupCommit<null>({
    async commit(group) {
      tries++;
      if (isFull) throw new Error('no space');
      stored.push(...group.readings.map(({ at }) => at));
      return null;
    },
    committed() {},
    failed: (cause) => failures.push(cause.message),
    now: () => 0,
    isFull: (cause) => cause.message === 'no space',
    fullChanged: (now) => told.push(now),
    spacingMs: 5000,
    groupSize: 400,
    ...options,
  });
  return {
    queue,
    stored,
    acknowledged,
    letGo,
    told,
    failures,
    tries: () => tries,
    fill: () => {
      isFull = true;
    },
    free: () => {
      isFull = false;
    },
    add: (at: number, name = String(at), from?: string) =>
      queue.add([reading(at)], [], (failure) => (failure ? letGo : acknowledged).push(name), {
        from,
      }),
  };
}

describe('a full disk', () => {
  it('acknowledges nothing, and holds what came instead of cutting its sender off', async () => {
    const disk = fillingDisk();
    disk.fill();
    disk.add(1);
    disk.add(2);
    await vi.advanceTimersByTimeAsync(3000);
    expect([disk.acknowledged, disk.letGo]).toEqual([[], []]);
    expect(disk.queue.isFull()).toBe(true);
    expect(disk.told).toEqual([true]);
    expect(disk.failures).toEqual(['no space']);
  });

  it('is tried again, more and more seldom, and goes on by itself in the order of arrival', async () => {
    const disk = fillingDisk();
    disk.fill();
    disk.add(1);
    await vi.advanceTimersByTimeAsync(3000);
    // At 0, 0.5 and 1.5 s; the next one is due at 3.5 s.
    expect(disk.tries()).toBe(3);
    disk.add(2);
    disk.free();
    await vi.advanceTimersByTimeAsync(1000);
    expect(disk.stored).toEqual([1, 2]);
    expect(disk.acknowledged).toEqual(['1', '2']);
    expect(disk.letGo).toEqual([]);
    expect(disk.queue.isFull()).toBe(false);
    expect(disk.told).toEqual([true, false]);
  });

  it('lets a sender go before it gives up by itself, and forgets what it brought', async () => {
    const disk = fillingDisk();
    disk.fill();
    disk.add(1);
    await vi.advanceTimersByTimeAsync(6000);
    disk.add(2);
    await vi.advanceTimersByTimeAsync(3900);
    expect(disk.letGo).toEqual(['1']);
    disk.free();
    disk.add(1, '1 again');
    await vi.advanceTimersByTimeAsync(4000);
    expect(disk.stored).toEqual([2, 1]);
    expect(disk.acknowledged).toEqual(['2', '1 again']);
  });

  it('lets a sender go with all that it has sent, so that it can come back and send it again', async () => {
    const disk = fillingDisk();
    disk.fill();
    disk.add(1, 'a1', 'a');
    disk.add(2, 'b1', 'b');
    await vi.advanceTimersByTimeAsync(6000);
    disk.add(3, 'a2', 'a');
    disk.add(4, 'c1', 'c');
    await vi.advanceTimersByTimeAsync(3900);
    expect(disk.letGo).toEqual(['a1', 'b1', 'a2']);
  });

  it('holds another broker’s messages as long as it is told', async () => {
    const disk = fillingDisk({ longestHoldMs: 600_000 });
    disk.fill();
    disk.add(1);
    await vi.advanceTimersByTimeAsync(500_000);
    disk.free();
    await vi.advanceTimersByTimeAsync(4000);
    expect([disk.letGo, disk.acknowledged]).toEqual([[], ['1']]);
  });

  it('holds so many at most; who comes after them is let go', async () => {
    const disk = fillingDisk();
    disk.fill();
    for (let at = 0; at < 21_000; at++) disk.add(at);
    await turn();
    // Before the first failure nobody knew.
    expect(disk.letGo).toHaveLength(0);
    disk.add(21_000);
    expect(disk.letGo).toHaveLength(1);
  });

  it('does not keep the daemon from stopping', async () => {
    const disk = fillingDisk();
    disk.fill();
    disk.add(1);
    await turn();
    await disk.queue.drained();
    expect(disk.letGo).toEqual(['1']);
  });
});
