import { cpSync, existsSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from '../house/planted-tree.ts';

/** One line of the built program that is made wrong. */
export interface Plant {
  /** below .build */
  file: string;
  from: string;
  to: string;
}

/**
 * Copies the built program and makes one line of it wrong, to see that a test finds that.
 *
 * @param folder - an empty one to copy into
 * @throws Error when the line is not there (any more)
 */
export function plantedBuild(folder: string, { file, from, to }: Plant): URL {
  const build = join(ROOT, '.build');
  if (!existsSync(build)) throw new Error('Build first: npm run build');
  for (const part of ['daemon', 'sensors']) {
    cpSync(join(build, part), join(folder, 'build', part), { recursive: true });
  }
  rmSync(join(folder, 'node_modules'), { force: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  // It says that the files are modules.
  cpSync(join(ROOT, 'package.json'), join(folder, 'package.json'));
  const path = join(folder, 'build', file);
  const text = readFileSync(path, 'utf8');
  if (text.split(from).length !== 2) throw new Error(`${file} has no single line "${from}"`);
  writeFileSync(path, text.replace(from, to));
  return new URL(`${pathToFileURL(join(folder, 'build')).href}/`);
}
