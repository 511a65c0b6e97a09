import { afterEach, beforeEach, vi } from 'vitest';
import type { IncomingReading } from '../../daemon/rules/facts.ts';

export const reading = (at: number): IncomingReading => ({
  sensor: 'rack-1',
  quantity: 'air-temperature',
  at,
  raw: 20,
  flags: 0,
});

/** In this file’s tests time goes on only when it is told to. */
export function holdTheClock(): void {
  beforeEach(() => {
    vi.useFakeTimers({
      toFake: [
        'setTimeout',
        'clearTimeout',
        'setImmediate',
        'clearImmediate',
        'performance',
        'queueMicrotask',
      ],
    });
  });
  afterEach(() => {
    vi.useRealTimers();
  });
}

/** Lets everything that is due now happen, and nothing later. */
export const turn = () => vi.advanceTimersByTimeAsync(0);
