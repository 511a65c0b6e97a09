import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';

/** What a package needs only to be installed from source; an artefact brings what came of that. */
const ONLY_TO_INSTALL = new Set(['prebuild-install']);

// `import … from 'x'`, `export … from 'x'`, `import 'x'` and `import('x')`, as the compiler writes them.
const IMPORTED =
  /(?:^\s*(?:import|export)\b[^'"`;()]*?\bfrom\s*|^\s*import\s*|\bimport\(\s*)(['"])([^'"\n]+)\1/gm;

/**
 * The packages that compiled files import.
 *
 * @param {string[]} folders folders of compiled files
 * @returns {string[]} names, each once, in order
 */
export function importedPackages(folders) {
  const names = new Set();
  for (const file of folders.flatMap(filesBelow).filter((name) => name.endsWith('.js'))) {
    for (const [, , specifier] of readFileSync(file, 'utf8').matchAll(IMPORTED)) {
      if (specifier === undefined || /^[./]|^node:/.test(specifier)) continue;
      const parts = specifier.split('/');
      const name = parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/');
      if (!builtinModules.includes(name)) names.add(name);
    }
  }
  return [...names].sort();
}

/**
 * Packages that are needed while the program runs: those it imports, and what they need in turn.
 *
 * @param {{ packages: Record<string, any> }} lock package-lock.json
 * @param {readonly string[]} imported names that the program itself imports
 * @returns {string[]} paths as in the lock file, in order
 * @throws {Error} when the lock file lacks one
 */
export function runtimePackages(lock, imported) {
  const found = new Set();
  /** @type {{ name: string, from: string, optional: boolean }[]} */
  const open = imported.map((name) => ({ name, from: '', optional: false }));
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    const { name, from, optional } = one;
    const path = resolved(lock, name, from);
    if (path === null) {
      if (optional) continue;
      throw new Error(`${from || 'the program'} needs ${name}, which package-lock.json lacks`);
    }
    if (found.has(path)) continue;
    found.add(path);
    const { dependencies, optionalDependencies, peerDependencies, peerDependenciesMeta } =
      lock.packages[path];
    for (const needed of Object.keys(dependencies ?? {})) {
      if (!ONLY_TO_INSTALL.has(needed)) open.push({ name: needed, from: path, optional: false });
    }
    for (const needed of Object.keys(peerDependencies ?? {})) {
      if (peerDependenciesMeta?.[needed]?.optional) continue;
      open.push({ name: needed, from: path, optional: false });
    }
    for (const needed of Object.keys(optionalDependencies ?? {})) {
      open.push({ name: needed, from: path, optional: true });
    }
  }
  return [...found].sort();
}

/**
 * Where Node finds a package, as seen from another one.
 *
 * @param {{ packages: Record<string, any> }} lock
 * @param {string} name
 * @param {string} from
 */
function resolved(lock, name, from) {
  const inside = '/node_modules/';
  let within = from;
  while (within !== '') {
    const path = `${within}${inside}${name}`;
    if (lock.packages[path] !== undefined) return path;
    within = within.includes(inside) ? within.slice(0, within.lastIndexOf(inside)) : '';
  }
  const path = `node_modules/${name}`;
  return lock.packages[path] === undefined ? null : path;
}

/**
 * @param {string} folder
 * @returns {string[]}
 */
export function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesBelow(path) : [path];
    });
}
