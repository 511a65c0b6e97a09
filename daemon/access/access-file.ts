import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fchownSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { z } from 'zod';
import { Role } from '../contract/role.ts';
import type { SecretHash } from './secret-hash.ts';

const Hash = z.object({
  salt: z.string(),
  hash: z.string(),
  cost: z.int(),
  block: z.int(),
  parallel: z.int(),
});

const KeptDevice = z.object({
  id: z.string(),
  kind: z.enum(['log-in', 'tablet']),
  role: Role,
  name: z.string(),
  /** UTC epoch ms. */
  since: z.number(),
  seenAt: z.number().nullable(),
});
export type KeptDevice = z.infer<typeof KeptDevice>;

const KeptLogin = z.object({
  name: z.string(),
  kind: z.enum(['node', 'listener', 'forecaster']),
  /** Sensors that a node may publish as. */
  sensors: z.array(z.string()),
  secret: Hash,
  createdAt: z.number(),
  usedAt: z.number().nullable(),
});
export type KeptLogin = z.infer<typeof KeptLogin>;

const Kept = z.object({
  version: z.literal(1),
  /** Base64; signs cookies. */
  key: z.string(),
  pins: z.object({ own: Hash.nullable(), operate: Hash.nullable() }),
  devices: z.array(KeptDevice),
  mqtt: z.object({ mode: z.enum(['open', 'pairing', 'closed']), logins: z.array(KeptLogin) }),
});
/** All that decides who may do what. Plain data; never changed in place. */
export type Kept = z.infer<typeof Kept>;

/** Beside the database, and in no backup or export: a copy of either lets nobody in. */
export const accessFile = (dataFolder: string) => join(dataFolder, 'access.json');

export const newKey = (): string => randomBytes(32).toString('base64');

const empty = (): Kept => ({
  version: 1,
  key: newKey(),
  pins: { own: null, operate: null },
  devices: [],
  mqtt: { mode: 'open', logins: [] },
});

/** A lock older than this was left by a process that was killed. */
const staleLockMs = 10_000;
const lockTries = 100;

export interface AccessFile {
  /** What the file says now; read again only when it was changed, by the command for example. */
  read(): Kept;
  /** The same without a look at the disk: what this process knew last. For what is asked often. */
  known(): Kept;
  /** Replaces the file by what `change` makes of it, one change after the other. */
  change(change: (kept: Kept) => Kept): Promise<Kept>;
}

/**
 * The file of PINs, devices and passwords, shared by the daemon and the command line.
 *
 * @throws Error saying what to do when the file is there and cannot be read: without it everyone on
 *   the computer could change things, so it is never taken for missing
 */
export function openAccessFile(file: string): AccessFile {
  let kept: Kept | null = null;
  let stamp = '';
  let queue: Promise<unknown> = Promise.resolve();

  function stampNow(): string {
    try {
      const { ino, size, mtimeMs } = statSync(file);
      return `${ino} ${size} ${mtimeMs}`;
    } catch {
      return 'none';
    }
  }

  function read(): Kept {
    const now = stampNow();
    if (kept !== null && now === stamp) return kept;
    try {
      kept = now === 'none' ? empty() : parse(file);
    } catch (cause) {
      // A daemon that runs goes by what it knew; the next change writes it anew.
      if (kept === null) throw cause;
    }
    stamp = now;
    return kept;
  }

  async function replace(change: (kept: Kept) => Kept): Promise<Kept> {
    const unlock = await lock(`${file}.lock`);
    try {
      const next = change(read());
      write(file, next);
      kept = next;
      stamp = stampNow();
      return next;
    } finally {
      unlock();
    }
  }

  const first = read();
  return {
    read,
    known: () => kept ?? first,
    change(change) {
      const done = queue.then(() => replace(change));
      queue = done.catch(() => {});
      return done;
    },
  };
}

function parse(file: string): Kept {
  const advice =
    'Put it back as it was, or remove it to begin anew: PINs, log-ins, tablets and the names of sensors are then gone.';
  try {
    return Kept.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch (cause) {
    // What the file holds is secret: the words of the parser would quote it.
    const why = (cause as NodeJS.ErrnoException).code ?? 'it is damaged';
    throw new Error(`The file of PINs ${file} cannot be read: ${why}. ${advice}`);
  }
}

function write(file: string, kept: Kept): void {
  mkdirSync(dirname(file), { recursive: true });
  const part = `${file}.part`;
  rmSync(part, { force: true });
  const opened = openSync(part, 'wx', 0o600);
  try {
    writeSync(opened, `${JSON.stringify(kept, null, 2)}\n`);
    // Written by root for a daemon that is not: it has to read it.
    if (process.getuid?.() === 0) {
      const { uid, gid } = statSync(dirname(file));
      fchownSync(opened, uid, gid);
    }
    fsyncSync(opened);
  } finally {
    closeSync(opened);
  }
  renameSync(part, file);
}

async function lock(name: string): Promise<() => void> {
  mkdirSync(dirname(name), { recursive: true });
  for (let tries = 0; tries < lockTries; tries++) {
    try {
      closeSync(openSync(name, 'wx', 0o600));
      return () => rmSync(name, { force: true });
    } catch (cause) {
      if ((cause as NodeJS.ErrnoException).code !== 'EEXIST') throw cause;
      if (existsSync(name) && Date.now() - statSync(name).mtimeMs > staleLockMs) {
        rmSync(name, { force: true });
      }
    }
    await pause(20);
  }
  throw new Error(`${name} is held by another program; remove it if none is running.`);
}

export const asKept = ({ salt, hash, cost, block, parallel }: SecretHash): SecretHash => ({
  salt,
  hash,
  cost,
  block,
  parallel,
});
