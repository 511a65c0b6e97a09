import { type ChildProcess, fork } from 'node:child_process';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { DamageAnswer } from './damage-process.ts';
import { damageFile } from './whole-file.ts';

/**
 * Looks the whole database through, in a process of its own at low priority, so that neither the
 * pages nor the acknowledgements wait for it.
 *
 * Readings go on being taken in where damage is found: sensors cannot keep them for days. It is
 * said on every page until the next start, which refuses the file.
 *
 * @param processUrl - the compiled process; only tests give another one
 */
export function damageWatch(
  file: string,
  processUrl: URL = new URL('./damage-process.js', import.meta.url),
) {
  let running: ChildProcess | null = null;

  /** What was found by the last look, kept beside the database; none when it is whole. */
  const found = (): string[] => {
    const name = damageFile(file);
    return existsSync(name) ? readFileSync(name, 'utf8').split('\n').filter(Boolean) : [];
  };
  let faults = found();

  return {
    /** Looks now; returns what is wrong. One look at a time. */
    look(): Promise<string[]> {
      if (running) return Promise.resolve(faults);
      const child = fork(fileURLToPath(processUrl), [file], { execArgv: [], stdio: 'ignore' });
      running = child;
      lowerPriority(child);
      return new Promise((resolve, reject) => {
        let answer: DamageAnswer | null = null;
        child.once('message', (message) => {
          answer = message as DamageAnswer;
        });
        child.once('error', reject);
        child.once('exit', (code, signal) => {
          running = null;
          if (!answer) {
            reject(new Error(`Looking the database through ended early (${signal ?? code}).`));
            return;
          }
          faults = answer.faults.map((text) => text.replaceAll('\n', ', '));
          if (faults.length > 0) writeFileSync(damageFile(file), `${faults.join('\n')}\n`);
          else rmSync(damageFile(file), { force: true });
          resolve(faults);
        });
      });
    },
    /** What is wrong with the database, for the operator; none when it is whole. */
    doubts: (): Said[] => {
      const [found] = faults;
      return found === undefined ? [] : [sentence('database-damaged', { found })];
    },
    /** Ends a look that is being taken. */
    close(): void {
      running?.kill('SIGKILL');
    },
  };
}

function lowerPriority(child: ChildProcess): void {
  try {
    if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_LOW);
  } catch {
    // A process that is gone already needs no priority.
  }
}
