import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../store/store-sides.ts';

const PROJECT = join(import.meta.dirname, '../..');
const { folder, remove } = temporaryFolder();
const { billOfMaterials } = await import(join(PROJECT, 'deploy/release/bill-of-materials.mjs'));
let files: string[];

beforeAll(() => {
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', folder];
  const said = execFileSync('npm', args, { cwd: PROJECT, stdio: ['ignore', 'pipe', 'ignore'] });
  const [pack] = JSON.parse(said.toString()) as { filename: string; files: { path: string }[] }[];
  files = (pack?.files ?? []).map(({ path }) => path);
  execFileSync('tar', ['xzf', pack?.filename ?? '', '-C', folder], { cwd: folder });
}, 60_000);
afterAll(remove);

describe('what npm packs', () => {
  const allowed = [
    /^(package\.json|README\.md|CHANGELOG\.md|SECURITY\.md|LICENSE)$/,
    /^\.build\/bundle\/([\w./-]+\.js|licences\.md)$/,
    /^\.build\/dashboard\/(index\.html|[\w./-]+\.(js|css|svg|png|webmanifest|json|woff2))$/,
    /^deploy\/[\w.-]+\.(md|sh|service|conf|acl|toml)$/,
    /^deploy\/(start|attached)\.mjs$/,
    /^deploy\/asyncapi\.json$/,
    /^deploy\/setup\/[\w-]+\.mjs$/,
    /^deploy\/pictures\/[\w-]+\.png$/,
  ];

  it('is what runs and what is read, without tests, sources, maps and tools', () => {
    expect(files.filter((file) => !allowed.some((rule) => rule.test(file)))).toEqual([]);
    expect(files).toContain('.build/bundle/cli.js');
    expect(files).toContain('.build/dashboard/index.html');
  });

  it('is loaded with all its modules by a Node that requires no ES modules, as 20 before 20.19', () => {
    const main = JSON.stringify(pathToFileURL(join(PROJECT, '.build/daemon/main.js')).href);
    const args = ['--no-experimental-require-module', '-e', `import(${main})`];
    expect(() => execFileSync(process.execPath, args, { stdio: 'pipe' })).not.toThrow();
  });

  it('runs once its modules are beside it, and installs and builds nothing', () => {
    symlinkSync(join(PROJECT, 'node_modules'), join(folder, 'package/node_modules'));
    const start = join(folder, 'package/deploy/start.mjs');
    const { status, stdout, stderr } = spawnSync(process.execPath, [start, '--help'], {
      encoding: 'utf8',
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('Usage: boardcure');
  });

  it('needs nothing to run that only builds or tests', () => {
    const { dependencies } = JSON.parse(readFileSync(join(folder, 'package/package.json'), 'utf8'));
    for (const name of ['typescript', 'vite', 'vitest', 'preact', 'uplot']) {
      expect(dependencies).not.toHaveProperty([name]);
    }
  });
});

describe('the bill of materials', () => {
  const bill = {
    bomFormat: 'CycloneDX',
    serialNumber: 'urn:uuid:of-the-moment',
    metadata: {
      timestamp: 'now',
      component: { 'bom-ref': 'boardcure@1', name: 'folder', type: 'library' },
    },
    components: [{ 'bom-ref': 'zod@4' }, { 'bom-ref': 'vite@8' }],
    dependencies: [
      { ref: 'boardcure@1', dependsOn: ['zod@4', 'vite@8'] },
      { ref: 'vite@8', dependsOn: [] },
    ],
  };
  const facts = { name: 'boardcure', version: '1', runs: new Set(['zod@4']), seconds: 0 };

  it('tells what runs, by the name of the program, and is the same each time', () => {
    const told = billOfMaterials(bill, facts);
    expect(told).toMatchObject({
      metadata: {
        timestamp: '1970-01-01T00:00:00.000Z',
        component: { name: 'boardcure', type: 'application' },
      },
      components: [{ 'bom-ref': 'zod@4' }],
      dependencies: [{ ref: 'boardcure@1', dependsOn: ['zod@4'] }],
    });
    // The form that the CycloneDX schema asks for (bom-1.5, serialNumber).
    expect(told.serialNumber).toMatch(
      /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/,
    );
    expect(billOfMaterials({ ...bill, serialNumber: 'urn:uuid:other' }, facts)).toEqual(told);
    expect(billOfMaterials(bill, { ...facts, version: '2' }).serialNumber).not.toBe(
      told.serialNumber,
    );
  });
});
