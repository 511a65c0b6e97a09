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

/**
 * Touched “on each successful synchronization”; gone at a restart, as all of /run.
 *
 * **Source:** systemd-timesyncd.service(8) of systemd 252, FILES; file-hierarchy(7).
 */
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
        // “Whether the kernel reports the time as synchronized”: org.freedesktop.timedate1(5) of
        // systemd 252. It forgets that when somebody sets the clock (Linux, ntp_clear; from memory).
        said('timedatectl', ['show', '--property=NTPSynchronized', '--value']),
        said('chronyc', ['-n', 'tracking']),
      ]);
      return { synchronised: kernel.trim() === 'yes' || isFollowing(chrony), mark: null };
    },
  };
}

/**
 * Whether chrony follows a source. Also while it tells of a leap second to come.
 *
 * **Source:** chronyc(1) of chrony 4.3, `tracking`: the leap status “can be Normal, Insert second,
 * Delete second or Not synchronised”.
 *
 * @param tracking - what `chronyc tracking` printed
 */
export const isFollowing = (tracking: string): boolean =>
  /^Leap status\s*: (Normal|Insert second|Delete second)\s*$/m.test(tracking);

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
