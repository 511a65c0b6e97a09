import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Overview } from '../daemon/contract/overview.ts';
import type { Api } from './api.ts';
import { ASK_AFTER_MS, type Connection, connectionAt } from './connection.ts';
import { type ClockMark, shedTime } from './shed-clock.ts';
import { listen } from './stream.ts';

/** What the daemon last said, kept fresh; owns the stream and the page’s one clock. */
export interface Live {
  readonly overview: ReadonlySignal<Overview | null>;
  readonly connection: ReadonlySignal<Connection>;
  /** The daemon’s time, UTC epoch ms, every second. */
  readonly now: ReadonlySignal<number>;
  /** This device’s time, epoch ms, every second. */
  readonly deviceNow: ReadonlySignal<number>;
  /** Grows whenever the batch may have changed; a page that shows it reads it again. */
  changesOf(batchId: string): number;
  /** Whether looking needs a log-in that this device does not have. */
  readonly isLocked: ReadonlySignal<boolean>;
  /** Asks for the overview at once, after something was recorded. */
  refresh(): Promise<void>;
  /** Begins anew with what this device may do now, after a log-in or log-out. */
  reopen(): void;
  close(): void;
}

const TICK_MS = 1_000;

/**
 * @param api - to ask when the stream is silent for long
 */
export function createLive(api: Api): Live {
  const openedAt = Date.now();
  const overview = signal<Overview | null>(null);
  const mark = signal<ClockMark>({ shedNow: openedAt, speed: 1, receivedAt: openedAt });
  const deviceNow = signal(openedAt);
  const lastHeardAt = signal<number | null>(null);
  const missedAt = signal<number | null>(null);
  const changes = signal<Readonly<Record<string, number>>>({});
  const isLocked = signal(false);
  let asking = false;

  function heard(): void {
    lastHeardAt.value = Date.now();
    missedAt.value = null;
  }

  function missed(): void {
    if (missedAt.value === null) missedAt.value = Date.now();
  }

  function take(next: Overview): void {
    heard();
    isLocked.value = false;
    overview.value = next;
    mark.value = {
      shedNow: Date.parse(next.now),
      speed: next.speed,
      receivedAt: Date.now(),
    };
  }

  async function refresh(): Promise<void> {
    if (asking) return;
    asking = true;
    const outcome = await api.call('overview', {});
    asking = false;
    if (outcome.kind === 'done') take(outcome.reply);
    else if (outcome.problem.code === 'BC_LOGIN_NEEDED') lock();
    else missed();
  }

  /** It is there, and says that it shows nothing to this device. */
  function lock(): void {
    heard();
    isLocked.value = true;
    overview.value = null;
  }

  const stream = listen('/api/v1/stream', {
    onOpen: heard,
    onBroken: missed,
    onEvent(event) {
      heard();
      if (event.kind === 'overview') take(event.overview);
      else changes.value = { ...changes.value, [event.batchId]: counted(event.batchId) + 1 };
    },
  });

  function counted(batchId: string): number {
    return changes.value[batchId] ?? 0;
  }

  const ticking = setInterval(() => {
    deviceNow.value = Date.now();
    // A line can die without a word, so a long silence is checked.
    const silence = deviceNow.value - (lastHeardAt.value ?? openedAt);
    if (silence > ASK_AFTER_MS || missedAt.value !== null) void refresh();
  }, TICK_MS);

  return {
    overview,
    connection: computed(() =>
      connectionAt(
        { lastHeardAt: lastHeardAt.value, missedAt: missedAt.value, openedAt },
        deviceNow.value,
      ),
    ),
    now: computed(() => shedTime(mark.value, deviceNow.value)),
    deviceNow,
    changesOf: counted,
    refresh,
    isLocked,
    reopen() {
      stream.reopen();
      void refresh();
    },
    close() {
      clearInterval(ticking);
      stream.close();
    },
  };
}
