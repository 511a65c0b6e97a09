import { spawn } from 'node:child_process';

/** Whoever started the process and watches over it, where that is systemd; else nobody hears. */
export interface ServiceManager {
  /** All is up. */
  ready(status: string): void;
  stopping(): void;
  /**
   * Says again and again that all is well, as often as asked for, as long as it is.
   *
   * @param answers - settles when it is; while it does not, nothing is said
   * @returns how to stop
   */
  watch(answers: () => Promise<unknown>): () => void;
}

/** How a word gets to the service manager. */
export type Tell = (words: readonly string[]) => void;

/** Of the time that silence is allowed, a sign of life may take this share. */
const shareOfSilence = 1 / 4;

/**
 * Speaks to systemd as sd_notify(3) has it.
 *
 * Node cannot send on a unix datagram socket, so systemd’s own small program says each word. With
 * the unit’s five minutes of allowed silence that is a program of some milliseconds every 75 s.
 *
 * @param env - the environment that systemd gave
 */
export function serviceManager(
  env: NodeJS.ProcessEnv,
  pid = process.pid,
  tell: Tell = sayByProgram,
): ServiceManager {
  const say = env.NOTIFY_SOCKET ? tell : () => {};
  const allowedMs = Number(env.WATCHDOG_USEC ?? Number.NaN) / 1000;
  const isForUs = env.WATCHDOG_PID === undefined || env.WATCHDOG_PID === String(pid);
  return {
    ready: (status) => say(['READY=1', `STATUS=${status}`, `MAINPID=${pid}`]),
    stopping: () => say(['STOPPING=1']),
    watch(answers) {
      if (!isForUs || !Number.isFinite(allowedMs)) return () => {};
      let asked = false;
      const timer = setInterval(() => {
        // One question at a time: whoever is stuck is not asked more and more.
        if (asked) return;
        asked = true;
        answers().then(
          () => {
            asked = false;
            say(['WATCHDOG=1']);
          },
          // It is gone, which ends the process by other ways.
          () => {},
        );
      }, allowedMs * shareOfSilence);
      return () => clearInterval(timer);
    },
  };
}

function sayByProgram(words: readonly string[]): void {
  const child = spawn('systemd-notify', words, { stdio: 'ignore' });
  // Without the program the service would be taken for one that never gets ready, and ended.
  child.on('error', (cause) => process.stderr.write(`systemd-notify: ${cause.message}\n`));
  child.unref();
}
