import { uptime } from 'node:os';
import type { Clock, KnownTime } from './clock.ts';
import { followsStep, type Vouch, vouchFor } from './clock-trust.ts';
import { type ClockReadings, steadyTime } from './steady-time.ts';
import {
  bootName,
  hasBatteryClock,
  type ServiceState,
  systemTimeService,
  type TimeService,
} from './time-service.ts';
import { sentence } from './wording/english.ts';

/** What a wall clock is read from; the computer’s own by default, others in tests. */
export interface WallClockParts {
  read: () => ClockReadings;
  service: TimeService;
  boot: string;
  hasBatteryClock: boolean;
  /** Longest time between readings that counts, ms. */
  longestGapMs: number;
}

const lookEveryMs = 1000;
/** How often the time service is asked while something hangs on its answer. */
const askEveryLooks = 10;
/** What the time service said before a step may still stand just after it. */
const serviceLagMs = 5000;

export interface WallClock extends Clock {
  /** Asks the time service now, where something hangs on its answer. */
  ask(): Promise<void>;
}

/** The computer’s clock, followed while it runs and watched for being set. */
export function wallClock(parts: Partial<WallClockParts> = {}): WallClock {
  const { read, service, boot, longestGapMs, ...own } = { ...computer(), ...parts };
  const time = steadyTime(read());
  let known: KnownTime = { newestAt: null, trustedBoot: null };
  let vouch: Vouch | null = null;
  let said: ServiceState = service.glance();
  /** When the wall clock was last set; and what the service’s mark was before. */
  let step: { atMonotonicMs: number; mark: number | null } | null = null;
  let setForward = false;
  let onTrusted = () => {};

  function look(): ClockReadings {
    const readings = read();
    const stepMs = time.look(readings);
    if (stepMs !== 0) {
      step = { atMonotonicMs: readings.monotonicMs, mark: said.mark };
      if (vouch === null) setForward = stepMs > 0;
      else if (followsStep(vouch, stepMs, longestGapMs)) time.follow();
    }
    if (vouch === null) {
      time.restart();
      judge(readings);
    }
    return readings;
  }

  function judge({ wallMs, bootMs }: ClockReadings): void {
    const evidence = { wallMs, upMs: bootMs, synchronised: said.synchronised, setForward };
    vouch = vouchFor({ ...evidence, hasBatteryClock: own.hasBatteryClock, boot }, known);
    if (vouch !== null) onTrusted();
  }

  /** Whether what the service says is about the clock as it was set last. */
  function confirms(state: ServiceState, nowMonotonicMs: number): boolean {
    if (!state.synchronised) return false;
    if (step === null) return true;
    if (state.mark !== null) return state.mark !== step.mark;
    return nowMonotonicMs - step.atMonotonicMs >= serviceLagMs;
  }

  async function ask(): Promise<void> {
    if (vouch !== null && time.held() === 0) return;
    const state = await service.ask();
    const readings = look();
    if (!confirms(state, readings.monotonicMs)) return;
    said = state;
    step = null;
    if (vouch === null) judge(readings);
    else {
      vouch = 'time-service';
      time.follow();
    }
  }

  return {
    now() {
      look();
      return time.at();
    },
    monotonic: () => Math.round(read().monotonicMs),
    trusted() {
      look();
      return vouch !== null;
    },
    boot,
    doubts() {
      look();
      if (vouch === null) return [sentence('clock-not-set', {})];
      const minutes = Math.round(time.held() / 60_000);
      if (minutes === 0) return [];
      const way = minutes > 0 ? 'clock-was-set/forward' : 'clock-was-set/back';
      return [sentence(way, { minutes: Math.abs(minutes) })];
    },
    learn(what) {
      known = what;
      vouch = null;
      look();
    },
    watch(trusted) {
      onTrusted = trusted;
      let looks = 0;
      const timer = setInterval(() => {
        look();
        if (looks++ % askEveryLooks === 0) void ask();
      }, lookEveryMs);
      timer.unref();
      return {
        close() {
          onTrusted = () => {};
          clearInterval(timer);
        },
      };
    },
    ask,
    speed: 1,
  };
}

/** The clocks of this computer at one moment. */
class ComputerReadings implements ClockReadings {
  readonly wallMs = Date.now();
  readonly monotonicMs: number;
  constructor(sinceStartMs: number) {
    this.monotonicMs = sinceStartMs + performance.now();
  }
  get bootMs() {
    return uptime() * 1000;
  }
}

function computer(): WallClockParts {
  // Monotonic time since the computer was started is the same in every process; performance.now is
  // the same clock since this process was, and cheaper: this is read with every message.
  const sinceStartMs = Number(process.hrtime.bigint() / 1000n) / 1000 - performance.now();
  return {
    read: () => new ComputerReadings(sinceStartMs),
    service: systemTimeService(),
    boot: bootName(),
    hasBatteryClock: hasBatteryClock(),
    longestGapMs: 3 * 3_600_000,
  };
}
