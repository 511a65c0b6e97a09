import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';

/** What a time service says about the clock. */
export interface ServiceState {
  synchronised: boolean;
  /** Changes whenever the service has set the clock anew; null where that is not told. */
  mark: number | null;
}

/** Who can tell whether the clock was set by a time service. */
export interface TimeService {
  /** What can be read at once. */
  glance(): ServiceState;
  /** The same, asking programs as well where a file does not tell. */
  ask(): Promise<ServiceState>;
}

/** systemd-timesyncd touches it at each synchronisation; gone at a restart. From memory. */
const timesyncdFile = '/run/systemd/timesync/synchronized';
const askMs = 2000;

/** The computer’s own time service: systemd-timesyncd, else what the kernel or chrony say. */
export function systemTimeService(file: string = timesyncdFile): TimeService {
  function glance(): ServiceState {
    try {
      return { synchronised: true, mark: statSync(file).mtimeMs };
    } catch {
      return { synchronised: false, mark: null };
    }
  }
  return {
    glance,
    async ask() {
      const seen = glance();
      if (seen.synchronised) return seen;
      const [kernel, chrony] = await Promise.all([
        // The kernel forgets that it was synchronised when somebody sets the clock.
        said('timedatectl', ['show', '--property=NTPSynchronized', '--value']),
        said('chronyc', ['-n', 'tracking']),
      ]);
      const synchronised = kernel.trim() === 'yes' || /^Leap status\s*: Normal/m.test(chrony);
      return { synchronised, mark: null };
    },
  };
}

/** What a program printed; nothing when it is not there, fails or takes too long. */
function said(program: string, args: string[]): Promise<string> {
  return new Promise((resolve) => {
    execFile(program, args, { timeout: askMs }, (failure, out) => resolve(failure ? '' : out));
  });
}

/** Whether the computer keeps time while it is off. **Source:** Linux, sysfs-class-rtc. */
export const hasBatteryClock = (): boolean => existsSync('/sys/class/rtc/rtc0/since_epoch');

/**
 * Names this running of the computer.
 *
 * **Source:** Linux, random(4), boot_id. Elsewhere a name for this process stands in, and monotonic
 * time does not outlive it.
 */
export function bootName(): string {
  try {
    return readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
  } catch {
    return randomUUID();
  }
}
