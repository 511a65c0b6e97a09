import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { readJson } from '../setup/read-json.mjs';
import { importedPackages, runtimePackages } from './runtime-packages.mjs';

/** What of the project lies in the artefact as it is; the documents that it shows are among it. */
const AS_THEY_ARE = ['README.md', 'LICENSE', 'CHANGELOG.md', 'SECURITY.md'];

/** Scripts and folders in `deploy` for those who have the sources. */
const DEVELOPERS_ONLY =
  /\.mjs$|tsconfig\.json$|deploy\/(?:setup|lint|release|docs|trial|bin)(?:\/|$)/;

/** Files of packages that nobody runs or reads on a board. */
const NOT_RUN = /\.(?:d\.[cm]?ts|map|tsbuildinfo)$/;

/** Sources of the database engine; what was made of them is brought for each board. */
const ENGINE_SOURCES = /^node_modules\/better-sqlite3\/(?:deps|src|build|binding\.gyp)(?:\/|$)/;

/**
 * Lays out all that a board needs, in a folder.
 *
 * @param {string} root the project’s folder, installed and built
 * @param {string} folder where; it is made
 * @param {{ file: string, target: import('./native-targets.mjs').NativeTarget }[]} engines
 * @returns {string[]} the packages that are in it, by their path
 * @throws {Error} when the lock file does not fit the build
 */
export function gather(root, folder, engines) {
  const build = join(root, '.build');
  const own = readJson(join(root, 'package.json'));
  const lock = readJson(join(root, 'package-lock.json'));
  const imported = importedPackages([join(build, 'daemon'), join(build, 'sensors')]);
  const packages = runtimePackages(lock, imported).filter((path) => existsSync(join(root, path)));

  mkdirSync(folder, { recursive: true });
  for (const part of ['bundle', 'dashboard']) {
    cpSync(join(build, part), join(folder, 'program', part), {
      recursive: true,
      filter: (path) => !NOT_RUN.test(path),
    });
  }
  for (const path of packages) copyPackage(root, folder, path);
  for (const { file, target } of engines) {
    const to = join(folder, 'node_modules/better-sqlite3', target.folder, 'better_sqlite3.node');
    mkdirSync(dirname(to), { recursive: true });
    cpSync(file, to);
  }
  for (const path of AS_THEY_ARE) cpSync(join(root, path), join(folder, path));
  cpSync(join(root, 'deploy'), join(folder, 'deploy'), {
    recursive: true,
    filter: (path) => !DEVELOPERS_ONLY.test(path.slice(root.length)),
  });
  for (const [from, to] of [
    ['deploy/install.sh', 'install.sh'],
    ['deploy/bin/boardcure', 'bin/boardcure'],
    ['deploy/bin/boardcure', 'bin/boardcure-attached'],
    ['deploy/bin/boardcure.mjs', 'program/boardcure.mjs'],
    ['deploy/bin/is-alive.mjs', 'program/is-alive.mjs'],
    ['deploy/bin/boardcure-attached.mjs', 'program/boardcure-attached.mjs'],
  ]) {
    cpSync(join(root, from ?? ''), join(folder, to ?? ''));
  }
  const { name, version, description, license, engines: node } = own;
  const dependencies = Object.fromEntries(imported.map((one) => [one, own.dependencies[one]]));
  const manifest = { name, version, description, license, type: 'module', private: true };
  writeFileSync(
    join(folder, 'package.json'),
    `${JSON.stringify({ ...manifest, engines: node, dependencies }, null, 2)}\n`,
  );
  return packages;
}

/**
 * One package without those within it, which come by their own path.
 *
 * @param {string} root
 * @param {string} folder
 * @param {string} path
 */
function copyPackage(root, folder, path) {
  const from = join(root, path);
  cpSync(from, join(folder, path), {
    recursive: true,
    filter: (file) => {
      const inside = file.slice(from.length);
      if (inside.startsWith('/node_modules')) return false;
      return !NOT_RUN.test(file) && !ENGINE_SOURCES.test(path + inside);
    },
  });
}

/**
 * @param {string} root the project’s folder
 * @returns {string} its version
 */
export function versionOf(root) {
  return JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version;
}
