import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { runCommand } from '../journey/running-daemon.ts';
import { fillSite } from './backup-site.ts';

/*
 * The faults injected: folders and files that the user who runs the command may not read or write, and a
 * file where a folder is to be. Root may do everything, so that the commands run as nobody then.
 */
const nobody = 65_534;
const isRoot = process.getuid?.() === 0;
const asNobody = isRoot
  ? ['setpriv', '--reuid', `${nobody}`, '--regid', `${nobody}`, '--clear-groups']
  : [];

function whyNot(): string | null {
  const cli = fileURLToPath(new URL('../../.build/bundle/cli.js', import.meta.url));
  const [program = process.execPath, ...words] = [...asNobody, process.execPath];
  const look = `require('node:fs').accessSync(${JSON.stringify(cli)})`;
  const { status, stderr, error } = spawnSync(program, [...words, '-e', look]);
  return status === 0 ? null : String(error ?? stderr);
}
const why = whyNot();
if (why !== null) process.stderr.write(`\n*** SKIPPED, NOT TESTED (other users): ${why}\n`);

let folder: string;
let data: string;
let theirs: string;
let backup: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-permitted-'));
  chmodSync(folder, 0o755);
  data = join(folder, 'data');
  backup = join(folder, 'backup.sqlite');
  theirs = join(folder, 'theirs');
  fillSite(join(folder, 'source'), { readings: 5 });
  fillSite(data, { readings: 5 });
  mkdirSync(theirs);
  for (const path of [data, theirs, ...readdirSync(data).map((name) => join(data, name))]) {
    if (isRoot) chownSync(path, nobody, nobody);
  }
  const { status, stderr } = spawnSync(process.execPath, [
    ...['-e', 'import(process.argv[1]).then((it) => it.run(process.argv.slice(2)))', '--'],
    new URL('../../.build/bundle/cli.js', import.meta.url).href,
    ...['backup', backup, '--data', join(folder, 'source')],
  ]);
  expect(status, String(stderr)).toBe(0);
});
afterAll(() => {
  for (const path of [data, theirs]) chmodSync(path, 0o755);
  rmSync(folder, { recursive: true, force: true });
});

async function said(...args: string[]): Promise<string> {
  const command = runCommand(args, { tracer: asNobody });
  expect(await command.ended).toBe(1);
  // Sentences, beside lines of the log, and no line of the program’s own.
  const told = command
    .err()
    .split('\n')
    .filter((line) => !line.startsWith('{'));
  expect(told.join('\n')).not.toMatch(/^\s+at |SqliteError|EACCES/m);
  return [...command.out, command.err()].join('\n');
}

describe.skipIf(why !== null)('where the user may not', () => {
  const doThis = /may not be read or written by this user\. Run this as the user .*chown -R/;
  const ports = ['--http', '127.0.0.1:0', '--mqtt', '127.0.0.1:0'];

  it('write the target, backup and export name it and say what to do', async () => {
    chmodSync(theirs, 0o555);
    const copy = await said('backup', join(theirs, 'copy.sqlite'), '--data', data);
    expect(copy).toMatch(doThis);
    expect(copy).toContain(theirs);
    expect(await said('export', join(theirs, 'out'), '--data', data)).toMatch(doThis);
    expect(readdirSync(theirs)).toEqual([]);
    chmodSync(theirs, 0o755);
  });

  it('read the data folder, nobody is told to put a backup in its place', async () => {
    chmodSync(data, 0o000);
    const commands = [
      ['backup', join(theirs, 'copy.sqlite')],
      ['export', join(theirs, 'out')],
      ['restore', backup, '--replace'],
      ['serve', ...ports],
      ['doctor', ...ports],
    ];
    for (const command of commands) {
      const text = await said(...command, '--data', data);
      expect(text, command[0]).toMatch(doThis);
      expect(text, command[0]).not.toContain('restore <file>');
    }
    chmodSync(data, 0o755);
  });

  it('write the database, the daemon says so and not that it is damaged', async () => {
    chmodSync(databaseFile(data), 0o444);
    const text = await said('serve', ...ports, '--data', data);
    expect(text).toMatch(doThis);
    expect(text).not.toContain('restore <file>');
    expect(await said('restore', backup, '--data', data, '--replace')).toMatch(doThis);
    chmodSync(databaseFile(data), 0o644);
  });

  it('make a folder because a file is there, it is said', async () => {
    const file = join(theirs, 'file');
    writeFileSync(file, '');
    expect(await said('serve', ...ports, '--data', file)).toContain('is a file');
    expect(await said('restore', backup, '--data', file)).toContain('is a file');
    rmSync(file);
  });
});
