import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { temporaryFolder } from '../store/store-sides.ts';
import { setup } from './small-project.ts';

const { whyNativeModuleFails } = await setup('native-module');

it('an engine compiled with headers that make it end the process is not taken, though it loads', () => {
  const { folder, remove } = temporaryFolder();
  const module = join(folder, 'node_modules/better-sqlite3');
  mkdirSync(join(module, 'build/Release'), { recursive: true });
  writeFileSync(join(module, 'index.js'), 'module.exports = class { close() {} };\n');
  const file = join(module, 'build/Release/better_sqlite3.node');
  writeFileSync(file, 'AddEnvironmentCleanupHook');
  expect(whyNativeModuleFails(folder)).toBeNull();
  writeFileSync(file, 'AddEnvironmentCleanupHook RemoveEnvironmentCleanupHook');
  expect(whyNativeModuleFails(folder)).toMatch(/headers of Node 24\.19/);
  remove();
});
