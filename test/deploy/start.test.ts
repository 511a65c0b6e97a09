import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { fillModules, setup, smallProject, write } from './small-project.ts';

const { ensureInstalled } = await setup('install');
const { ensureBuilt } = await setup('build');

describe('a start', () => {
  it('runs the command from any folder, in the same process, with standard output its own', async () => {
    const root = smallProject();
    fillModules(root);
    await ensureInstalled(root, { say: () => {}, whyUnusable: () => null });
    await ensureBuilt(root, { say: () => {}, compile: writeCommand, bundle: async () => {} });
    const elsewhere = join(root, 'else where');
    mkdirSync(elsewhere);
    const script = join(root, 'deploy/start.mjs');
    const ran = spawnSync(process.execPath, [script, '--data', './x'], {
      cwd: elsewhere,
      encoding: 'utf8',
    });
    expect(ran.stderr).toBe('');
    expect(JSON.parse(ran.stdout)).toEqual({
      args: ['--data', './x'],
      cwd: elsewhere,
      pid: ran.pid,
    });
    expect(ran.status).toBe(0);
  });

  it('leaves standard output to the daemon also while npm, compiler and bundler print', () => {
    const { href } = pathToFileURL(join(smallProject(), 'deploy/setup/run-program.mjs'));
    const program = `
      const { runProgram } = await import(${JSON.stringify(href)});
      await runProgram(process.execPath, ['-e', 'console.log("added 279 packages")'], { cwd: '.' });`;
    const ran = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
      encoding: 'utf8',
    });
    expect(ran).toMatchObject({ status: 0, stdout: '', stderr: 'added 279 packages\n' });
  });

  it('ends with 1, and says on standard error why, when it cannot be made ready', () => {
    const root = smallProject();
    rmSync(join(root, 'package-lock.json'));
    const ran = spawnSync(process.execPath, [join(root, 'deploy/start.mjs')], {
      cwd: tmpdir(),
      encoding: 'utf8',
    });
    expect(ran).toMatchObject({ status: 1, stdout: '' });
    expect(ran.stderr).toMatch(/package-lock\.json is missing\n {2}where: .*\n {2}what to do: /);
  });
});

const writeCommand = async (root: string): Promise<void> => {
  write(root, {
    '.build/bundle/cli.js': `
      export const run = async (args) =>
        console.log(JSON.stringify({ args, cwd: process.cwd(), pid: process.pid }));`,
    '.build/package.json': '{"type":"module"}',
  });
};
