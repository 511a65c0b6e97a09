import { createHash } from 'node:crypto';
import { chmodSync, lstatSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { SetupFault } from '../setup/fault.mjs';
import { runProgram } from '../setup/run-program.mjs';
import { filesBelow } from './runtime-packages.mjs';

/**
 * Packs a folder so that the same files make the same bytes: in order of their names, all of one
 * time and owner, with modes that do not hang on who unpacked the project.
 *
 * @param {string} folder what is packed, under its own name
 * @param {string} file the tarball, whose checksum is laid beside it
 * @param {number} seconds time that all files get, epoch seconds
 * @throws {SetupFault} when tar or gzip fail
 */
export async function packTarball(folder, file, seconds) {
  for (const path of filesBelow(folder)) {
    chmodSync(path, lstatSync(path).mode & 0o100 || isProgram(path) ? 0o755 : 0o644);
  }
  const args = [
    ...['--create', '--file', file, '--directory', dirname(folder), '--format=ustar'],
    ...['--sort=name', `--mtime=@${seconds}`, '--owner=0', '--group=0', '--numeric-owner'],
    ...['--mode=u+rwX,go=rX', '--use-compress-program=gzip --no-name', basename(folder)],
  ];
  const failure = await runProgram('tar', args, { cwd: dirname(file) });
  if (failure !== null) {
    throw new SetupFault(`packing failed (${failure})`, {
      where: file,
      doThis: 'see that GNU tar and gzip are installed and that the disk has room',
    });
  }
  const sum = createHash('sha256').update(readFileSync(file)).digest('hex');
  writeFileSync(`${file}.sha256`, `${sum}  ${basename(file)}\n`);
}

/** @param {string} path */
const isProgram = (path) => /\/(?:install\.sh|bin\/boardcure(?:-attached)?)$/.test(path);
