import { describe, expect, it } from 'vitest';
import { connectionAt, LOUD_AFTER_MS, SILENT_MS } from '../../dashboard/connection.ts';
import { shedTime } from '../../dashboard/shed-clock.ts';

const openedAt = 1_000_000;

describe('the line to the daemon', () => {
  it('is awaited at first, and missed aloud when nothing comes', () => {
    const heard = { openedAt, lastHeardAt: null, missedAt: null };
    expect(connectionAt(heard, openedAt + 1_000).kind).toBe('waiting');
    expect(connectionAt(heard, openedAt + LOUD_AFTER_MS)).toEqual({
      kind: 'lost',
      since: openedAt,
    });
  });

  it('does not frighten anyone over a hiccup', () => {
    const heard = { openedAt, lastHeardAt: openedAt + 500, missedAt: openedAt + 2_000 };
    expect(connectionAt(heard, openedAt + 2_000 + LOUD_AFTER_MS - 1).kind).toBe('live');
  });

  it('counts a loss from the last word, not from when the loss was noticed', () => {
    const heard = { openedAt, lastHeardAt: openedAt + 500, missedAt: openedAt + 2_000 };
    expect(connectionAt(heard, openedAt + 2_000 + LOUD_AFTER_MS)).toEqual({
      kind: 'lost',
      since: openedAt + 500,
    });
  });

  it('is not believed after a long silence that nobody missed: the device slept', () => {
    const heard = { openedAt, lastHeardAt: openedAt, missedAt: null };
    expect(connectionAt(heard, openedAt + SILENT_MS - 1).kind).toBe('live');
    expect(connectionAt(heard, openedAt + 8 * 3_600_000)).toEqual({
      kind: 'lost',
      since: openedAt,
    });
  });

  it('is live again once something was heard', () => {
    const heard = { openedAt, lastHeardAt: openedAt + 90_000, missedAt: null };
    expect(connectionAt(heard, openedAt + 91_000).kind).toBe('live');
  });
});

describe('the daemon’s clock on a page', () => {
  it('goes on from the daemon’s last word, as fast as the shed’s time runs', () => {
    const mark = { shedNow: 5_000_000, speed: 900, receivedAt: 100 };
    expect(shedTime(mark, 100)).toBe(5_000_000);
    expect(shedTime(mark, 2_100)).toBe(5_000_000 + 900 * 2_000);
  });

  it('never runs back when the device’s clock is set back', () => {
    expect(shedTime({ shedNow: 5_000_000, speed: 1, receivedAt: 9_000 }, 1_000)).toBe(5_000_000);
  });
});
