import { accessSync, constants, existsSync, readFileSync, statfsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { databaseFile } from '../store/open.ts';
import { type Finding, look, ok, sizeWords, wrong } from './doctor-finding.ts';

/** Less than this is used up in days, or by one backup. Assumption. */
const scarceBytes = 1e9;
/** Less than this is no room for the log of a busy hour. Assumption. */
const tooLittleBytes = 100e6;

/** File systems that matter here by their number. **Source:** Linux, statfs(2). */
const fileSystems: Readonly<Record<number, { name: string; trouble: string | null }>> = {
  61267: { name: 'ext4', trouble: null },
  2435016766: { name: 'btrfs', trouble: null },
  1481003842: { name: 'XFS', trouble: null },
  4076150800: { name: 'F2FS', trouble: null },
  16914836: { name: 'a memory disk', trouble: 'it is empty after a power cut' },
  19780: { name: 'FAT', trouble: 'it may lose files when the power is cut' },
  538032816: { name: 'exFAT', trouble: 'it may lose files when the power is cut' },
  26985: { name: 'a network disk (NFS)', trouble: 'databases lock badly over a network' },
  4283649346: { name: 'a network disk (SMB)', trouble: 'databases lock badly over a network' },
  4266872130: { name: 'a network disk (SMB)', trouble: 'databases lock badly over a network' },
};

/** Looks whether the daemon can write where its data are to lie. */
export function lookAtFolder(data: string): Finding {
  const permit =
    'Give the folder to the user that the daemon runs as (chown -R), or choose another with --data.';
  if (!existsSync(data)) {
    const nearest = nearestFolder(data);
    const fault = faultOf(nearest, constants.W_OK | constants.X_OK);
    return fault === null
      ? ok('folder', `The data folder ${data} does not exist yet; the first start makes it.`)
      : wrong('folder', `The data folder ${data} cannot be made: ${nearest} ${fault}.`, permit);
  }
  if (!statSync(data).isDirectory()) {
    return wrong('folder', `${data} is a file, not a folder.`, 'Choose a folder with --data.');
  }
  const all = constants.R_OK | constants.W_OK | constants.X_OK;
  const file = databaseFile(data);
  const paths = ['', '-wal', '-shm', '-lock'].map((tail) => `${file}${tail}`).filter(existsSync);
  const faults = [
    { path: data, fault: faultOf(data, all) },
    ...paths.map((path) => ({ path, fault: faultOf(path, constants.R_OK | constants.W_OK) })),
  ].filter(({ fault }) => fault !== null);
  const [first] = faults;
  if (first) return wrong('folder', `${first.path} ${first.fault}.`, permit);
  const owner = statSync(data).uid;
  const stranger = paths.find((path) => statSync(path).uid !== owner);
  if (stranger !== undefined) {
    return look(
      'folder',
      `${stranger} belongs to another user than the folder: the daemon was once started as somebody else.`,
      'Give all of the folder to the user that the daemon runs as (chown -R).',
    );
  }
  return ok('folder', `The data folder ${data} can be read and written.`);
}

/** Looks at the room that is left, and at what kind of disk it is. */
export function lookAtDisk(data: string): Finding[] {
  const folder = nearestFolder(data);
  const { bavail, bsize, blocks, type, files, ffree } = statfsSync(folder);
  const free = bavail * bsize;
  const room = `${sizeWords(free)} of ${sizeWords(blocks * bsize)} are free`;
  const findings: Finding[] = [];
  const clear = 'Delete what is not needed, or move the data folder to a larger disk.';
  if (free < tooLittleBytes) {
    findings.push(wrong('disk', `${room}: soon no reading can be kept.`, clear));
  } else if (files > 0 && ffree === 0) {
    findings.push(wrong('disk', `${room}, but no further file can be made.`, clear));
  } else if (free < scarceBytes) findings.push(look('disk', `${room}: that is little.`, clear));
  else findings.push(ok('disk', `${room}.`));
  const kind = fileSystems[type >>> 0];
  const card = isMemoryCard(folder) ? ' on a memory card' : '';
  if (kind?.trouble) {
    findings.push(
      look(
        'disk',
        `The data lie on ${kind.name}: ${kind.trouble}.`,
        'Move the data folder to a disk of the computer’s own file system.',
      ),
    );
  } else if (card) {
    findings.push(
      look(
        'disk',
        `The data lie${card}, and cards wear out by writing.`,
        'Let nightly backups go to another disk (folder in the section backup of the settings).',
      ),
    );
  } else findings.push(ok('disk', `The data lie on ${kind?.name ?? 'a disk of an unknown kind'}.`));
  return findings;
}

/** The folder itself, or the nearest one above that exists. */
function nearestFolder(path: string): string {
  let folder = path;
  while (!existsSync(folder) && dirname(folder) !== folder) folder = dirname(folder);
  return folder;
}

function faultOf(path: string, mode: number): string | null {
  try {
    accessSync(path, mode);
    return null;
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    if (code === 'EROFS') return 'lies on a disk that is mounted for reading only';
    return code === 'EACCES' || code === 'EPERM'
      ? 'may not be read or written by this user'
      : message;
  }
}

/** Whether the kernel drives the disk of a folder as a memory card. */
function isMemoryCard(folder: string): boolean {
  try {
    const { dev } = statSync(folder);
    // **Source:** the layout of device numbers in the C library's sysmacros.h, from memory.
    const major = Math.floor(dev / 256) & 0xfff;
    const minor = (dev & 0xff) | (Math.floor(dev / 4096) & 0xfff00);
    return /^DEVNAME=mmcblk/m.test(readFileSync(`/sys/dev/block/${major}:${minor}/uevent`, 'utf8'));
  } catch {
    // Not a disk of its own, or not Linux: nothing is known.
    return false;
  }
}
