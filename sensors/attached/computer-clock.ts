import { randomUUID } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { uptime } from 'node:os';
import { join } from 'node:path';
import { clockIsBelieved, type Now } from './dating.ts';

/** Further apart than this between two looks, and the wall clock was set. Assumption. */
const STEP_MS = 5000;

/** The computer's clocks, and whether the wall clock can be believed. */
export interface ComputerClock {
  /** @param newestAt - the newest moment in the queue, UTC epoch ms; null for none */
  now(newestAt: number | null): Now;
}

/**
 * The clocks of this computer.
 *
 * @param root - `/`, or a made tree
 *
 * **Source:** Linux, random(4) for boot_id; sysfs-class-rtc for the battery clock;
 * systemd-timesyncd touches the file under `/run` (from memory).
 */
export function computerClock(root: string): ComputerClock {
  const monotonic = () => Math.round(Number(process.hrtime.bigint() / 1_000_000n));
  const boot = bootName(root);
  let lastOffset = Date.now() - monotonic();
  let setForward = false;
  return {
    now(newestAt) {
      const monotonicMs = monotonic();
      const wallMs = Date.now();
      const offset = wallMs - monotonicMs;
      if (offset - lastOffset > STEP_MS) setForward = true;
      if (offset - lastOffset < -STEP_MS) setForward = false;
      lastOffset = offset;
      const believed = clockIsBelieved({
        wallMs,
        upMs: uptime() * 1000,
        synchronised: existsSync(join(root, 'run/systemd/timesync/synchronized')),
        hasBatteryClock: existsSync(join(root, 'sys/class/rtc/rtc0/since_epoch')),
        setForward,
        newestAt,
      });
      return { boot, monotonicMs, wallMs: believed ? wallMs : null };
    },
  };
}

function bootName(root: string): string {
  try {
    return readFileSync(join(root, 'proc/sys/kernel/random/boot_id'), 'utf8').trim();
  } catch {
    // monotonic time then does not outlive this process
    return randomUUID();
  }
}
