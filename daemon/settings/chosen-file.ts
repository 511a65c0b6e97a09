import { readFileSync } from 'node:fs';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { parse, stringify, TomlError } from 'smol-toml';
import { z } from 'zod';
import { Moment } from '../contract/moment.ts';

/** What a setting can be chosen to be on the page; null: nothing at all, where it may be left out. */
export type ChosenValue = string | number | boolean | null | readonly (string | number)[];

/** A setting that was chosen on the page. */
export interface ChosenEntry {
  /** Its path with dots. */
  readonly name: string;
  readonly value: ChosenValue;
  /** ISO 8601, UTC; null where nobody wrote it down. */
  readonly at: string | null;
  /** Name of the device; null for the computer itself. */
  readonly by: string | null;
}

export interface ChosenFile {
  /** The oldest choice first. */
  readonly entries: readonly ChosenEntry[];
  /** Why it cannot be read; null when it can. */
  readonly fault: string | null;
}

const Kept = z.object({
  chosen: z
    .array(
      z.object({
        name: z.string(),
        // TOML has no word for “nothing”: such an entry has no value.
        value: z
          .union([z.string(), z.number(), z.boolean(), z.array(z.union([z.string(), z.number()]))])
          .nullable()
          .default(null),
        // Written by hand it may be anything; it is told only where it is a moment.
        at: Moment.nullable().default(null).catch(null),
        by: z.string().nullable().default(null),
      }),
    )
    .default([]),
});

const HEAD = `# Settings that were chosen on the settings page: laid over the settings file, under environment and flags.
# The daemon writes this file. To let go of all that was chosen, stop the daemon and remove it.

`;

/** Where they are kept: beside the database, and like the settings file in no backup of it. */
export const chosenFileIn = (dataFolder: string): string =>
  join(dataFolder, 'settings-chosen.toml');

/** What was chosen. A file that is not there holds nothing; one that cannot be read says why. */
export function readChosen(file: string): ChosenFile {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    // A folder that is none is told of by whoever opens the database in it.
    if (code === 'ENOENT' || code === 'ENOTDIR') return { entries: [], fault: null };
    return { entries: [], fault: message };
  }
  try {
    return { entries: Kept.parse(parse(text)).chosen, fault: null };
  } catch (cause) {
    return { entries: [], fault: `${file} ${whatIsWrong(cause)}` };
  }
}

function whatIsWrong(cause: unknown): string {
  if (cause instanceof TomlError) return `is not TOML at line ${cause.line}`;
  if (cause instanceof z.ZodError) return `does not fit at ${cause.issues[0]?.path.join('.')}`;
  return 'is damaged';
}

/**
 * Puts what was chosen in the place of what the file held. At every moment the file is the old one or
 * the new one, whole: a kill leaves a `.part` beside it at most. One that could not be read is kept.
 */
export async function writeChosen(file: string, entries: readonly ChosenEntry[]): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  const isDamaged = readChosen(file).fault !== null;
  const part = `${file}.part`;
  try {
    const opened = await open(part, 'w', 0o644);
    try {
      await opened.writeFile(HEAD + stringify({ chosen: entries.map(asKept) }));
      await opened.sync();
    } finally {
      await opened.close();
    }
    if (isDamaged) await rename(file, `${file}.damaged`);
    await rename(part, file);
  } catch (cause) {
    await rm(part, { force: true }).catch(() => {});
    throw cause;
  }
  await syncFolder(dirname(file));
}

const asKept = (entry: ChosenEntry) =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== null));

/** The new name is on disk too. Some file systems of memory cards sync no folder. */
async function syncFolder(folder: string): Promise<void> {
  try {
    const opened = await open(folder, 'r');
    await opened.sync().finally(() => opened.close());
  } catch {
    // The name is then written when the system sees fit.
  }
}
