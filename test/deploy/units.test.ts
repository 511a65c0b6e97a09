import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { type InstalledRoot, installedRoot } from './installed-root.ts';

const DEPLOY = fileURLToPath(new URL('../../deploy', import.meta.url));
const units = readdirSync(DEPLOY).filter((name) => name.endsWith('.service'));

const run = (program: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8' });
  return { status, said: stdout + stderr };
};

/** A computer on which the unit's programs and user are what the installer makes of them. */
function withUnits(unit: string, change = (text: string) => text): InstalledRoot {
  const root = installedRoot();
  const write = (name: string, text: string) => {
    mkdirSync(dirname(root.path(name)), { recursive: true });
    writeFileSync(root.path(name), text);
    chmodSync(root.path(name), name.includes('/bin/') ? 0o755 : 0o644);
  };
  for (const target of ['sysinit', 'basic', 'shutdown', 'multi-user', 'network', 'time-set']) {
    write(`lib/systemd/system/${target}.target`, '[Unit]\n');
  }
  for (const name of units) {
    write(
      `etc/systemd/system/${name}`,
      name === unit
        ? change(readFileSync(join(DEPLOY, name), 'utf8'))
        : readFileSync(join(DEPLOY, name), 'utf8'),
    );
  }
  for (const program of ['boardcure', 'boardcure-attached']) {
    write(`opt/boardcure/current/bin/${program}`, '#!/bin/sh\n');
  }
  write('bin/kill', '#!/bin/sh\n');
  chmodSync(root.path('bin/kill'), 0o755);
  return root;
}

// Checks of systemd itself: systemd-analyze(1).
needs('systemd')('the units', () => {
  it.each(units)('%s: systemd finds nothing to mend', (unit) => {
    const root = withUnits(unit);
    const { status, said } = run(
      'systemd-analyze',
      `--root=${root.folder}/root`,
      '--man=no',
      'verify',
      unit,
    );
    root.remove();
    // What it says of a root that holds nothing else is no fault of the unit.
    const own = said.split('\n').filter((line) => line.includes('boardcure'));
    expect(own).toEqual([]);
    expect(status).toBe(0);
  });

  it('would be refused with a misspelt line, or a program that is not there', () => {
    for (const change of [
      (text: string) => text.replace('Restart=always', 'Restart=allways'),
      (text: string) => text.replace('current/bin/boardcure ', 'current/bin/none '),
    ]) {
      const root = withUnits('boardcure.service', change);
      const { said } = run(
        'systemd-analyze',
        `--root=${root.folder}/root`,
        '--man=no',
        'verify',
        'boardcure.service',
      );
      root.remove();
      expect(said).toMatch(/boardcure\.service.*(allways|bin\/none)/);
    }
  });

  it.each(units)(
    '%s: exposed by at most 2.0 of 10, and the engine may still translate code',
    (unit) => {
      const args = [
        'security',
        '--offline=true',
        '--threshold=20',
        '--no-pager',
        join(DEPLOY, unit),
      ];
      expect(run('systemd-analyze', ...args)).toMatchObject({ status: 0 });
      expect(readFileSync(join(DEPLOY, unit), 'utf8')).not.toMatch(/^MemoryDenyWriteExecute/m);
    },
  );
});

needs('shellcheck')('the scripts of the shell', () => {
  it('have nothing that their linter would mend', () => {
    const scripts = ['install.sh', 'bin/boardcure'].map((name) => join(DEPLOY, name));
    expect(run('shellcheck', ...scripts)).toEqual({ status: 0, said: '' });
  });
});
