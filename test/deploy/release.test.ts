import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../store/store-sides.ts';

const PROJECT = join(import.meta.dirname, '../..');
const one = temporaryFolder();
const two = temporaryFolder();
const { version } = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8'));
const name = `boardcure-${version}`;

/** Makes the artefact for this computer alone, which needs no network. */
const release = (to: string): Buffer => {
  const made = spawnSync(process.execPath, ['deploy/release.mjs', '--here', '--to', to], {
    cwd: PROJECT,
    encoding: 'utf8',
  });
  expect(made.status, made.stderr).toBe(0);
  return readFileSync(join(to, `${name}.tar.gz`));
};

let artefact: Buffer;
let listed: string[];
beforeAll(() => {
  artefact = release(one.folder);
  execFileSync('tar', ['xzf', `${name}.tar.gz`], { cwd: one.folder });
  listed = execFileSync('tar', ['tzf', `${name}.tar.gz`], { cwd: one.folder, encoding: 'utf8' })
    .split('\n')
    .filter((line) => line !== '' && !line.endsWith('/'))
    .map((line) => line.slice(name.length + 1));
});
afterAll(() => {
  one.remove();
  two.remove();
});

describe('the artefact', () => {
  it('is the same, byte for byte, when it is made again', () => {
    expect(release(two.folder).equals(artefact)).toBe(true);
    expect(readFileSync(join(one.folder, `${name}.tar.gz.sha256`), 'utf8')).toMatch(
      new RegExp(`^[0-9a-f]{64} {2}${name}\\.tar\\.gz\\n$`),
    );
  });

  it('holds what a board needs, and nothing that it does not', () => {
    expect([...new Set(listed.map((file) => file.split('/')[0]))].sort()).toEqual([
      ...['CHANGELOG.md', 'LICENSE', 'README.md', 'SECURITY.md', 'bin', 'deploy'],
      ...['install.sh', 'node_modules', 'package.json', 'program'],
    ]);
    const ours = listed.filter((file) => !file.startsWith('node_modules/'));
    expect(ours.filter((file) => /\.(ts|tsx|map|tsbuildinfo)$|(^|\/)test\//.test(file))).toEqual(
      [],
    );
    const packages = listed.filter((file) => file.startsWith('node_modules/'));
    for (const tool of ['typescript', 'vite', 'vitest', '@biomejs', 'preact', 'prebuild-install']) {
      expect(
        packages.some((file) => file.startsWith(`node_modules/${tool}/`)),
        tool,
      ).toBe(false);
    }
    expect(listed.filter((file) => file.endsWith('better_sqlite3.node'))).toEqual([
      `node_modules/better-sqlite3/lib/binding/node-v${process.versions.modules}-linux-${process.arch}/better_sqlite3.node`,
    ]);
  });

  it('brings every document that its documents point at', () => {
    const guides = listed.filter(
      (file) => file.endsWith('.md') && !file.startsWith('node_modules/'),
    );
    const missing = guides.flatMap((file) => {
      const text = readFileSync(join(one.folder, name, file), 'utf8');
      return [...text.matchAll(/\]\((?!https?:|#)([^)#\s]+)/g)]
        .map(([, target]) => join(file, '..', target ?? ''))
        .filter((target) => !listed.some((one) => one === target || one.startsWith(`${target}/`)))
        .filter((target) => !developersOnly.test(target))
        .map((target) => `${file}: ${target}`);
    });
    expect(missing).toEqual([]);
  });

  it('runs where it was unpacked: its doctor finds all packages and the engine as they should be', () => {
    const program = join(one.folder, name, 'bin/boardcure');
    const args = [
      'doctor',
      '--json',
      '--data',
      join(one.folder, 'data'),
      '--http',
      '0',
      '--mqtt',
      '0',
    ];
    const { stdout } = spawnSync(program, args, {
      encoding: 'utf8',
      env: { ...process.env, PATH: `${join(process.execPath, '..')}:${process.env.PATH}` },
    });
    const { findings } = JSON.parse(stdout) as {
      findings: { about: string; level: string; says: string }[];
    };
    expect(findings.filter(({ about, level }) => about === 'versions' && level !== 'ok')).toEqual(
      [],
    );
    expect(readdirSync(join(one.folder, name, 'node_modules')).length).toBeGreaterThan(50);
  });
});

/** Documents for those who have the sources. */
const developersOnly = /^(DEVELOPERS\.md|daemon\/|dashboard\/|sensors\/|test\/)/;
