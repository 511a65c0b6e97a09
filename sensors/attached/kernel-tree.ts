import { readdir, readFile, realpath } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Bus } from './find-channels.ts';

/** A device as the kernel shows it. */
export interface KernelDevice {
  readonly bus: Bus;
  /** its folder's name, such as `iio:device0`, `28-0316a2790b01`, `hwmon1` */
  readonly folder: string;
  /** everything it may be called: folder, `name` and `label` files, the parts of its real path */
  readonly calledBy: readonly string[];
  /** names of the files in its folder */
  readonly files: readonly string[];
  /** text of one of them; null where it is missing or the kernel refuses it */
  text(file: string): Promise<string | null>;
}

const FOLDERS: Readonly<Record<Bus, string>> = {
  iio: 'sys/bus/iio/devices',
  'one-wire': 'sys/bus/w1/devices',
  hwmon: 'sys/class/hwmon',
};

/**
 * The devices there are, in the order of bus and folder.
 *
 * @param root - `/`, or a made tree
 */
export async function kernelDevices(root: string): Promise<KernelDevice[]> {
  const devices: KernelDevice[] = [];
  for (const [bus, path] of Object.entries(FOLDERS) as [Bus, string][]) {
    for (const folder of (await namesIn(join(root, path))).sort()) {
      const full = join(root, path, folder);
      const files = await namesIn(full);
      if (files.length === 0) continue;
      const text = (file: string) => textOf(join(full, file));
      const own = [await text('name'), await text('label')].map((each) => each?.trim() ?? '');
      const real = await realpath(full).catch(() => full);
      const address = basename(join(real, '..'));
      const calledBy = [folder, ...own, address].filter((each) => each !== '');
      devices.push({ bus, folder, calledBy, files, text });
    }
  }
  return devices;
}

/** How long the kernel is given for one file; a 1-wire conversion takes 0.75 s. */
const PATIENCE_MS = 10_000;

async function textOf(file: string): Promise<string | null> {
  try {
    return await readFile(file, { encoding: 'utf8', signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    return null;
  }
}

async function namesIn(folder: string): Promise<string[]> {
  return readdir(folder).catch(() => []);
}
