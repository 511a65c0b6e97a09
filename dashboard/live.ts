import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Overview } from '../daemon/contract/overview.ts';
import type { Api, LastHeard } from './api.ts';
import { ASK_AFTER_MS, type Connection, connectionAt } from './connection.ts';
import { type ClockMark, shedTime } from './shed-clock.ts';
import { listen } from './stream.ts';

/** What the daemon last said, kept fresh; owns the stream and the page’s one clock. */
export interface Live {
  readonly overview: ReadonlySignal<Overview | null>;
  readonly connection: ReadonlySignal<Connection>;
  /** True from the first sign that the line is broken until the next word, however short that is. */
  readonly isMissing: ReadonlySignal<boolean>;
  /** The daemon’s time, UTC epoch ms, every second. */
  readonly now: ReadonlySignal<number>;
  /** This device’s time, epoch ms, every second. */
  readonly deviceNow: ReadonlySignal<number>;
  /** The shed’s clock at this moment and whether it was ever heard, with this device’s; UTC epoch ms. */
  clock(): { shedNow: number; known: boolean; deviceNow: number };
  /** A moment of this device’s clock as the shed’s clock shows it. */
  byShed(deviceAt: number): number;
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

/** Under this address `api` keeps it as well. */
const OVERVIEW = '/api/v1/overview';
const TICK_MS = 1_000;
/** What comes over the stream is kept for a later start no more often than this. */
const KEEP_EVERY_MS = 30_000;

/**
 * @param api - to ask when the stream is silent for long
 * @param heard - keeps what was last heard
 */
export function createLive(api: Api, heard: Pick<LastHeard, 'put' | 'clear'>): Live {
  const openedAt = Date.now();
  const overview = signal<Overview | null>(null);
  const mark = signal<ClockMark>({ shedNow: openedAt, speed: 1, receivedAt: openedAt });
  const deviceNow = signal(openedAt);
  const lastHeardAt = signal<number | null>(null);
  const missedAt = signal<number | null>(null);
  const changes = signal<Readonly<Record<string, number>>>({});
  const isLocked = signal(false);
  let asking = false;
  let keptAt = 0;

  function hear(): void {
    lastHeardAt.value = Date.now();
    missedAt.value = null;
  }

  function missed(): void {
    if (missedAt.value === null) missedAt.value = Date.now();
  }

  /** What was heard at some earlier time: worth seeing as long as it is shown as old. */
  function takeOld(old: Overview, heardAt: number): void {
    if (overview.value !== null) {
      missed();
      return;
    }
    overview.value = old;
    // Also by what it says of the time: this device’s own clock may be wrong.
    mark.value = { shedNow: Date.parse(old.now), speed: old.speed, receivedAt: heardAt };
    lastHeardAt.value = heardAt;
    missedAt.value = heardAt;
  }

  function take(next: Overview): void {
    hear();
    if (Date.now() - keptAt > KEEP_EVERY_MS) {
      keptAt = Date.now();
      void heard.put(OVERVIEW, { reply: next, heardAt: keptAt }).catch(() => {});
    }
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
    if (outcome.kind === 'done' && outcome.oldSince !== undefined) {
      takeOld(outcome.reply, outcome.oldSince);
    } else if (outcome.kind === 'done') take(outcome.reply);
    else if (outcome.problem.code === 'BC_LOGIN_NEEDED') lock();
    else missed();
  }

  /** It is there, and says that it shows nothing to this device. */
  function lock(): void {
    hear();
    isLocked.value = true;
    void heard.clear().catch(() => {});
    overview.value = null;
  }

  const stream = listen('/api/v1/stream', {
    onOpen: hear,
    onBroken() {
      missed();
      void refresh();
    },
    onEvent(event) {
      hear();
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
    isMissing: computed(() => lastHeardAt.value === null || missedAt.value !== null),
    now: computed(() => shedTime(mark.value, deviceNow.value)),
    deviceNow,
    clock() {
      const now = Date.now();
      return { shedNow: shedTime(mark.value, now), known: overview.value !== null, deviceNow: now };
    },
    byShed: (deviceAt) =>
      mark.value.shedNow + mark.value.speed * (deviceAt - mark.value.receivedAt),
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
