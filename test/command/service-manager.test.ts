import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { serviceManager } from '../../daemon/command/service-manager.ts';

let said: (readonly string[])[];
const tell = (words: readonly string[]) => said.push(words);

beforeEach(() => {
  said = [];
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const env = { NOTIFY_SOCKET: '/run/notify', WATCHDOG_USEC: '300000000', WATCHDOG_PID: '7' };

// Words and variables: sd_notify(3) and sd_watchdog_enabled(3) of systemd 252.
describe('the service manager', () => {
  it('is told when all is up, and when it ends', () => {
    const manager = serviceManager(env, 7, tell);
    manager.ready('Pages at port 8080.');
    manager.stopping();
    expect(said).toEqual([['READY=1', 'STATUS=Pages at port 8080.', 'MAINPID=7'], ['STOPPING=1']]);
  });

  it('gets a sign of life four times in the silence that it allows', async () => {
    const stop = serviceManager(env, 7, tell).watch(() => Promise.resolve());
    await vi.advanceTimersByTimeAsync(300_000);
    expect(said).toEqual(Array(4).fill(['WATCHDOG=1']));
    stop();
    await vi.advanceTimersByTimeAsync(300_000);
    expect(said).toHaveLength(4);
  });

  it('gets none while whoever writes is stuck, nor once it is gone', async () => {
    let answer = () => {};
    const stuck = new Promise<void>((resolve) => {
      answer = resolve;
    });
    const asked = vi.fn(() => stuck);
    const stop = serviceManager(env, 7, tell).watch(asked);
    await vi.advanceTimersByTimeAsync(900_000);
    expect(said).toEqual([]);
    expect(asked).toHaveBeenCalledTimes(1);
    answer();
    await vi.advanceTimersByTimeAsync(1);
    expect(said).toEqual([['WATCHDOG=1']]);
    stop();
    serviceManager(env, 7, tell).watch(() => Promise.reject(new Error('The store was closed.')));
    await vi.advanceTimersByTimeAsync(900_000);
    expect(said).toHaveLength(1);
  });

  it.each([
    ['there is none', {}],
    ['it watches over another process', { ...env, WATCHDOG_PID: '8' }],
    ['it asks for no sign', { NOTIFY_SOCKET: '/run/notify' }],
  ])('hears no sign of life where %s', async (_where, given) => {
    serviceManager(given, 7, tell).watch(() => Promise.resolve());
    await vi.advanceTimersByTimeAsync(900_000);
    expect(said).toEqual([]);
  });
});
