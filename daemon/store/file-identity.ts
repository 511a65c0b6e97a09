import { readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Where a disk tells the number it was made with: a memory card, one of NVMe, of SCSI or USB, a virtual one. */
const diskNumbers = ['device/cid', 'wwid', 'device/wwid', 'serial'];

/**
 * Names a file so that no copy of it has the same name, neither one made file by file nor an image on
 * another disk. A restart, an upgrade and another place on the same disk leave the name as it is.
 *
 * It goes by when the file was made, and by its inode only where the file system does not tell, since some
 * number their files anew each time they are mounted; not by the device, which is numbered in the order
 * of plugging in. It cannot tell an image put back on its own disk, nor a copy of a virtual one.
 *
 * @param blockDevices - the kernel’s folder of disks and partitions by number
 * @throws Error of the file system when there is no such file
 */
export function fileIdentity(file: string, blockDevices = '/sys/dev/block'): string {
  const { dev, ino, birthtimeNs } = statSync(file, { bigint: true });
  const made = birthtimeNs > 0n ? `${birthtimeNs}` : `inode ${ino}`;
  const disk = diskNumber(join(blockDevices, deviceName(dev)));
  return disk === null ? made : `${made} on ${disk}`;
}

/** **Source:** Linux, include/linux/kdev_t.h, new_encode_dev, as statx(2) and glibc’s makedev(3) extend it. */
function deviceName(dev: bigint): string {
  const major = ((dev >> 8n) & 0xfffn) | ((dev >> 32n) & ~0xfffn);
  const minor = (dev & 0xffn) | ((dev >> 12n) & ~0xffn);
  return `${major}:${minor}`;
}

/** @param device - of a disk or a partition; null where there is none or it has no number */
function diskNumber(device: string): string | null {
  try {
    const folder = realpathSync(device);
    const disk = textOf(join(folder, 'partition')) === null ? folder : join(folder, '..');
    return diskNumbers.map((name) => textOf(join(disk, name))).find((text) => text) ?? null;
  } catch {
    return null;
  }
}

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    return null;
  }
}
