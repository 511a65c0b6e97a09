import { type ChildProcess, fork } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { BackupRefusal, removeDatabase, type WholeCopy } from './backup-copy.ts';
import type { BackupAnswer } from './backup-process.ts';

export interface NightlyParts {
  /** The database. */
  file: string;
  folder: string;
  /** How many backups are kept. */
  keep: number;
  /** The compiled process; only tests give another one. */
  processUrl?: URL;
}

export interface NightBackup {
  file: string;
  /** Counted up with each backup, whatever the clock says. */
  number: number;
  /** UTC epoch ms by the file’s own time. */
  writtenAt: number;
  bytes: number;
}

const nameOfNight = /^night-(\d{5,})-\d{4}-\d\d-\d\d\.sqlite$/;
const hourMs = 3_600_000;
/** A shed’s computer that is switched off by night gets its backup at an hour when it is on. */
const overdueAfterMs = 30 * hourMs;

/** Where nightly backups go by the settings. */
export function nightFolder(settings: { data: string; backup: { folder: string | null } }): string {
  const { folder } = settings.backup;
  return folder === null ? join(settings.data, 'backups') : resolve(folder);
}

/**
 * The backups in a folder, the newest first. They are told apart by their number, since the clock of
 * a computer without a battery may have been years off.
 */
export function nightBackupsIn(folder: string): NightBackup[] {
  return namesIn(folder)
    .map((name) => ({ name, number: Number(nameOfNight.exec(name)?.[1] ?? Number.NaN) }))
    .filter(({ number }) => Number.isSafeInteger(number))
    .sort((a, b) => b.number - a.number)
    .map(({ name, number }) => {
      const file = join(folder, name);
      const { mtimeMs, size } = statSync(file);
      return { file, number, writtenAt: Math.round(mtimeMs), bytes: size };
    });
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw cause;
  }
}

/**
 * Whether a backup is to be made in this hour: in that of the setting, and in any other when there
 * is none yet, or the last night was missed.
 *
 * @param newestAt - UTC epoch ms of the newest backup, null for none; one from the future does not count
 * @param now - UTC epoch ms
 * @param isItsHour - whether the hour of the setting runs
 */
export function backupDue(newestAt: number | null, now: number, isItsHour: boolean): boolean {
  if (newestAt === null || newestAt > now + hourMs) return true;
  return now - newestAt >= (isItsHour ? 2 * hourMs : overdueAfterMs);
}

/**
 * Backups by night, each made by a process of its own at low priority: neither the pages nor the
 * acknowledgements wait for it, and its memory goes with it.
 */
export function nightlyBackups({ file, folder, keep, processUrl }: NightlyParts) {
  const program = processUrl ?? new URL('./backup-process.js', import.meta.url);
  let running: ChildProcess | null = null;
  let lastFailure: string | null = null;

  async function make(now: number): Promise<WholeCopy> {
    makeFolder(folder);
    for (const name of namesIn(folder)) {
      if (name.startsWith('night-') && name.includes('.sqlite.part')) rmSync(join(folder, name));
    }
    const number = (nightBackupsIn(folder)[0]?.number ?? 0) + 1;
    const day = new Date(now).toISOString().slice(0, 10);
    const target = join(folder, `night-${String(number).padStart(5, '0')}-${day}.sqlite`);
    const copy = await copyIn(target);
    // Only a new whole backup lets an old one go.
    for (const old of nightBackupsIn(folder).slice(keep)) removeDatabase(old.file);
    return copy;
  }

  function copyIn(target: string): Promise<WholeCopy> {
    const child = fork(fileURLToPath(program), [file, target], { execArgv: [], stdio: 'ignore' });
    running = child;
    lowerPriority(child);
    return new Promise((resolve, reject) => {
      let answer: BackupAnswer | null = null;
      child.once('message', (message) => {
        answer = message as BackupAnswer;
      });
      child.once('error', reject);
      child.once('exit', (code, signal) => {
        running = null;
        if (answer?.kind === 'done') resolve(answer.copy);
        else if (answer) reject(new BackupRefusal(answer.message));
        else reject(new Error(`The nightly backup ended early (${signal ?? code}).`));
      });
    });
  }

  return {
    /**
     * Makes a backup where one is due.
     *
     * @param now - UTC epoch ms
     * @param isItsHour - whether the hour of the setting runs
     * @returns the backup, or null when none was due
     * @throws BackupRefusal when it was not made, with what to do
     */
    async whenDue(now: number, isItsHour: boolean): Promise<WholeCopy | null> {
      const newestAt = nightBackupsIn(folder)[0]?.writtenAt ?? null;
      if (running !== null || !backupDue(newestAt, now, isItsHour)) return null;
      try {
        const copy = await make(now);
        lastFailure = null;
        return copy;
      } catch (cause) {
        lastFailure = cause instanceof Error ? cause.message : String(cause);
        throw cause;
      }
    },
    /** Why the last one was not made, for the operator; none when it was. */
    doubts: (): Said[] =>
      lastFailure === null ? [] : [sentence('backup-not-made', { because: lastFailure })],
    /** Makes a backup now. */
    make,
    /** Ends one that is being made; its half file is removed by the next one. */
    close(): void {
      running?.kill('SIGKILL');
    },
  };
}

/** Makes the folder, but not those above it: a disk that is not plugged in is not to be stood in for. */
function makeFolder(folder: string): void {
  try {
    mkdirSync(folder);
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    if (code === 'EEXIST') return;
    throw new BackupRefusal(
      `The folder ${folder} cannot be made: ${message}. See that its disk is plugged in and mounted.`,
      { cause },
    );
  }
}

function lowerPriority(child: ChildProcess): void {
  try {
    if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // A process that is gone already needs no priority.
  }
}
