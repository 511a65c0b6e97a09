import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../store/store-sides.ts';
import { write } from './small-project.ts';

const { importedPackages, runtimePackages } = await import(
  join(import.meta.dirname, '../../deploy/release/runtime-packages.mjs')
);

const lock = {
  packages: {
    '': { dependencies: { server: '1' } },
    'node_modules/server': {
      dependencies: { router: '1', logger: '1' },
      optionalDependencies: { fast: '1', gone: '1' },
    },
    'node_modules/server/node_modules/logger': { version: '2.0.0' },
    'node_modules/logger': { version: '1.0.0' },
    'node_modules/router': {
      dependencies: { logger: '1' },
      peerDependencies: { '@scope/kit': '1', rare: '1' },
      peerDependenciesMeta: { rare: { optional: true } },
    },
    'node_modules/@scope/kit': {},
    'node_modules/fast': {},
    'node_modules/engine': { dependencies: { 'prebuild-install': '1', bindings: '1' } },
    'node_modules/bindings': {},
    'node_modules/prebuild-install': {},
    'node_modules/compiler': {},
  },
};

describe('packages that are needed while the program runs', () => {
  it('are those it imports and what they need, each as Node finds it from where it is asked for', () => {
    expect(runtimePackages(lock, ['server'])).toEqual([
      'node_modules/@scope/kit',
      'node_modules/fast',
      'node_modules/logger',
      'node_modules/router',
      'node_modules/server',
      'node_modules/server/node_modules/logger',
    ]);
  });

  it('are without what only compiles an engine', () => {
    expect(runtimePackages(lock, ['engine'])).toEqual([
      'node_modules/bindings',
      'node_modules/engine',
    ]);
  });

  it('are refused to be told when the lock file lacks one', () => {
    expect(() => runtimePackages(lock, ['unknown'])).toThrow('the program needs unknown');
  });

  it('are found in every form of import that a compiler writes, and nowhere else', () => {
    const { folder, remove } = temporaryFolder();
    write(folder, {
      'a.js': `import one from 'one';\nimport { a,\n  b } from "@two/two/deep";\nimport 'three';\nexport { c } from 'four';\nconst five = await import('five');\n`,
      'b/c.js': `import { join } from 'node:path';\nimport fs from 'fs';\nimport './a.js';\n// taken from 'six'\nconst said = "import it from 'seven'";\n`,
      'd.txt': `import 'eight';\n`,
    });
    expect(importedPackages([folder])).toEqual(['@two/two', 'five', 'four', 'one', 'three']);
    remove();
  });
});
