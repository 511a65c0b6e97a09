import { existsSync, readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { setup, smallProject, write } from './small-project.ts';

const { ensureBuilt } = await setup('build');
const { sourceHash } = await setup('source-hash');

describe('the build', () => {
  const compile = (root: string): Promise<void> => {
    write(root, { '.build/daemon/main.js': '' });
    return Promise.resolve();
  };
  const ports = { say: () => {}, compile, bundle: () => Promise.resolve() };
  const mustNotBuild = { ...ports, compile: () => Promise.reject(new Error('built again')) };

  it('is made once, and made anew from nothing when a source changes', async () => {
    const root = smallProject();
    expect(await ensureBuilt(root, ports)).toBe('built');
    expect(await ensureBuilt(root, mustNotBuild)).toBe('already');
    write(root, { '.build/daemon/gone-from-the-sources.js': '' });
    write(root, { 'dashboard/page.ts': 'export const page = 2;\n' });
    expect(await ensureBuilt(root, ports)).toBe('built');
    expect(readdirSync(join(root, '.build/daemon'))).toEqual(['main.js']);
  });

  it('that fails is never taken for whole, nor is one cut short', async () => {
    const root = smallProject();
    await ensureBuilt(root, ports);
    write(root, { 'daemon/main.ts': 'export const main = ;\n' });
    const failing = { ...ports, bundle: () => Promise.reject(new Error('does not bundle')) };
    await expect(ensureBuilt(root, failing)).rejects.toThrow('does not bundle');
    expect(existsSync(join(root, '.build/stamp.json'))).toBe(false);
    expect(await ensureBuilt(root, ports)).toBe('built');
  });

  it('notices a renamed file, and text moved from one file to the next', () => {
    const root = smallProject();
    const hashes = [sourceHash(root)];
    renameSync(join(root, 'daemon/main.ts'), join(root, 'daemon/other.ts'));
    hashes.push(sourceHash(root));
    write(root, { 'daemon/a.ts': '12', 'daemon/b.ts': '3' });
    hashes.push(sourceHash(root));
    write(root, { 'daemon/a.ts': '1', 'daemon/b.ts': '23' });
    hashes.push(sourceHash(root));
    expect(new Set(hashes).size).toBe(4);
  });

  it('does not depend on what the tests or the data folder hold', () => {
    const root = smallProject();
    const before = sourceHash(root);
    write(root, { 'test/a.test.ts': '', 'data/boardcure.sqlite': '' });
    expect(sourceHash(root)).toBe(before);
  });
});
