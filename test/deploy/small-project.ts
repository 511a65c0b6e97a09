import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';

const DEPLOY = fileURLToPath(new URL('../../deploy', import.meta.url));

const projects: string[] = [];
afterAll(() => {
  for (const project of projects) rmSync(project, { recursive: true, force: true });
});

/**
 * Loads one of the start script's own modules; they are plain JavaScript and carry no types here.
 *
 * @param name the module's name, without its ending
 * @returns what it exports
 */
export const setup = (name: string) => import(join(DEPLOY, 'setup', `${name}.mjs`));

/**
 * Writes files below a folder.
 *
 * @param folder where
 * @param files texts by path
 */
export const write = (folder: string, files: Record<string, string>): void => {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
};

const lock = (packages: Record<string, object>): string => JSON.stringify({ packages });

/** The packages a small project asks for: one plain, one for another machine only. */
export const ASKED_FOR = {
  'node_modules/plain': { version: '1.0.0' },
  'node_modules/for-elsewhere': { version: '1.0.0', optional: true, os: ['elsewhere'] },
};

/**
 * A project of its own folder, not installed, not built, with a copy of the scripts.
 *
 * @returns its folder
 */
export const smallProject = (): string => {
  const root = mkdtempSync(join(tmpdir(), 'boardcure-start-'));
  projects.push(root);
  cpSync(DEPLOY, join(root, 'deploy'), { recursive: true });
  write(root, {
    'package.json': '{}',
    'package-lock.json': lock({ '': {}, ...ASKED_FOR }),
    'daemon/main.ts': 'export const main = 1;\n',
    'dashboard/page.ts': 'export const page = 1;\n',
  });
  return root;
};

/**
 * Fills a folder's node_modules as npm would.
 *
 * @param folder holds node_modules
 * @param version the version of the plain package
 */
export const fillModules = (folder: string, version = '1.0.0'): void => {
  write(folder, {
    'node_modules/plain/package.json': JSON.stringify({ version }),
    'node_modules/.package-lock.json': lock({ 'node_modules/plain': { version } }),
  });
};
