import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { fillModules, setup, smallProject, write } from './small-project.ts';

const { ensureInstalled } = await setup('install');
const { wantedStamp, writeStamp } = await setup('modules-stamp');

const quiet = { say: () => {}, whyUnusable: () => null };
const mustNotInstall = { ...quiet, install: () => Promise.reject(new Error('installed again')) };
const install = (folder: string): Promise<null> => {
  fillModules(folder);
  return Promise.resolve(null);
};
const plainVersion = (root: string): string =>
  JSON.parse(readFileSync(join(root, 'node_modules/plain/package.json'), 'utf8')).version;
const leftOver = (root: string): string[] => readdirSync(join(root, '.install'));

/** A project whose modules in use are of an earlier lock file. */
const outdatedProject = (): string => {
  const root = smallProject();
  fillModules(root, '0.9.0');
  writeStamp(join(root, 'node_modules'), { ...wantedStamp(root), lock: 'an earlier one' });
  return root;
};

describe('npm modules', () => {
  it('are installed on a fresh clone, and not again at the second start', async () => {
    const root = smallProject();
    expect(await ensureInstalled(root, { ...quiet, install })).toBe('installed');
    expect(plainVersion(root)).toBe('1.0.0');
    expect(leftOver(root)).toEqual([]);
    expect(await ensureInstalled(root, mustNotInstall)).toBe('already');
  });

  it('are installed again when the lock file changes, or Node’s interface for native modules', async () => {
    const root = outdatedProject();
    expect(await ensureInstalled(root, { ...quiet, install })).toBe('installed');
    expect(plainVersion(root)).toBe('1.0.0');
    writeStamp(join(root, 'node_modules'), { ...wantedStamp(root), abi: '0' });
    const unusable = (folder: string) => (folder === root ? 'made for another Node' : null);
    const ports = { ...quiet, install, whyUnusable: unusable };
    expect(await ensureInstalled(root, ports)).toBe('installed');
  });

  it('that npm installed by hand are taken over when they are what the lock file asks for', async () => {
    const root = smallProject();
    fillModules(root);
    expect(await ensureInstalled(root, mustNotInstall)).toBe('adopted');
    expect(await ensureInstalled(root, mustNotInstall)).toBe('already');
  });

  it.each([
    ['one has another version', (root: string) => fillModules(root, '1.0.1')],
    [
      'one is gone',
      (root: string) => rmSync(join(root, 'node_modules/plain'), { recursive: true }),
    ],
    ['npm did not finish', (root: string) => rmSync(join(root, 'node_modules/.package-lock.json'))],
  ])('are not taken over when %s', async (_what, spoil) => {
    const root = smallProject();
    fillModules(root);
    spoil(root);
    expect(await ensureInstalled(root, { ...quiet, install })).toBe('installed');
  });

  it('are not taken over when the native one does not load', async () => {
    const root = smallProject();
    fillModules(root);
    const unusable = (folder: string) => (folder === root ? 'made for another Node' : null);
    const ports = { ...quiet, install, whyUnusable: unusable };
    expect(await ensureInstalled(root, ports)).toBe('installed');
  });

  it('of before stay whole when the network is gone, and the fault says what to do', async () => {
    const root = outdatedProject();
    const offline = async (folder: string) => {
      write(folder, { 'node_modules/plain/half.js': '' });
      return 'exit code 1';
    };
    const fault = await ensureInstalled(root, { ...quiet, install: offline }).catch(
      (error: unknown) => error,
    );
    expect(fault).toMatchObject({
      name: 'SetupFault',
      message: expect.stringContaining('those of before are untouched'),
      where: expect.stringContaining('package-lock.json'),
      doThis: expect.stringContaining('npm registry'),
    });
    expect(plainVersion(root)).toBe('0.9.0');
    expect(leftOver(root)).toEqual([]);
  });

  it('of before stay whole when the new ones do not load', async () => {
    const root = outdatedProject();
    const unusable = { ...quiet, install, whyUnusable: () => 'no compiler' };
    await expect(ensureInstalled(root, unusable)).rejects.toThrow('no compiler');
    expect(plainVersion(root)).toBe('0.9.0');
  });

  it('are installed once when two start at the same time', async () => {
    const root = smallProject();
    const once = vi.fn(install);
    const both = [1, 2].map(() => ensureInstalled(root, { ...quiet, install: once }));
    expect((await Promise.all(both)).sort()).toEqual(['already', 'installed']);
    expect(once).toHaveBeenCalledTimes(1);
  });
});

describe('an installation cut short', () => {
  /** An outdated project with new modules staged whole, as just before the swap. */
  const beforeSwap = (): { root: string; staging: string } => {
    const root = outdatedProject();
    const staging = join(root, '.install/staging-1-1');
    fillModules(staging);
    writeStamp(join(staging, 'node_modules'), wantedStamp(root));
    return { root, staging };
  };

  it.each([
    ['before the swap', () => {}],
    [
      'between its two renames',
      (root: string) => renameSync(join(root, 'node_modules'), join(root, '.install/old')),
    ],
  ])('%s is completed without installing again', async (_when, crash) => {
    const { root } = beforeSwap();
    crash(root);
    expect(await ensureInstalled(root, mustNotInstall)).toBe('completed');
    expect(plainVersion(root)).toBe('1.0.0');
    expect(leftOver(root)).toEqual([]);
  });

  it('while the old modules were being removed needs no more than tidying', async () => {
    const { root, staging } = beforeSwap();
    renameSync(join(root, 'node_modules'), join(root, '.install/old'));
    renameSync(join(staging, 'node_modules'), join(root, 'node_modules'));
    rmSync(join(root, '.install/old/plain'), { recursive: true });
    expect(await ensureInstalled(root, mustNotInstall)).toBe('already');
    expect(plainVersion(root)).toBe('1.0.0');
    expect(existsSync(join(root, '.install/old'))).toBe(false);
  });

  it('brings the old modules back when what was staged is not what is wanted', async () => {
    const { root, staging } = beforeSwap();
    renameSync(join(root, 'node_modules'), join(root, '.install/old'));
    writeStamp(join(staging, 'node_modules'), { ...wantedStamp(root), lock: 'yet another' });
    const offline = () => Promise.resolve('exit code 1');
    await expect(ensureInstalled(root, { ...quiet, install: offline })).rejects.toThrow('failed');
    expect(plainVersion(root)).toBe('0.9.0');
  });

  it('by kill -9 leaves the old modules whole, and a lock that the next start breaks', async () => {
    const root = outdatedProject();
    const child = spawn(process.execPath, ['--input-type=module', '-e', hangingInstall(root)]);
    await line(child);
    child.kill('SIGKILL');
    await new Promise((resolve) => child.once('close', resolve));
    expect(leftOver(root)).toContain('lock');
    expect(plainVersion(root)).toBe('0.9.0');
    const said: string[] = [];
    const say = (text: string): number => said.push(text);
    expect(await ensureInstalled(root, { ...quiet, install, say })).toBe('installed');
    expect(said[0]).toContain(`dead process left ({"pid":${child.pid}`);
    expect(plainVersion(root)).toBe('1.0.0');
    expect(leftOver(root)).toEqual([]);
  });
});

/** A program that starts to install, says so and never ends. */
const hangingInstall = (root: string): string => `
  import { writeFileSync, mkdirSync } from 'node:fs';
  import { ensureInstalled } from ${JSON.stringify(join(root, 'deploy/setup/install.mjs'))};
  await ensureInstalled(${JSON.stringify(root)}, {
    whyUnusable: () => null,
    install: (folder) => {
      mkdirSync(folder + '/node_modules/half', { recursive: true });
      console.log('installing');
      return new Promise(() => setInterval(() => {}, 1000));
    },
  });`;

const line = (child: ChildProcess): Promise<string> =>
  new Promise((resolve) => child.stdout?.once('data', (data) => resolve(String(data))));
