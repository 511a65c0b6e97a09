import { mkdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gather, versionOf } from './release/gather.mjs';
import { nativeEngine } from './release/native-engine.mjs';
import { nativeTargets } from './release/native-targets.mjs';
import { packTarball } from './release/tarball.mjs';
import { timeOfSources } from './release/time-of-sources.mjs';
import { ensureBuilt } from './setup/build.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { say } from './setup/say.mjs';

/**
 * Makes the artefact that deploy/install.sh takes. `--here` brings the database engine only for this
 * computer and this Node, and needs no network; `--to <folder>` lays it elsewhere than `.release`.
 */
try {
  const args = process.argv.slice(2);
  await ensureInstalled(PROJECT_ROOT);
  await ensureBuilt(PROJECT_ROOT);
  const onlyHere = args.includes('--here');
  const targets = nativeTargets().filter(
    ({ arch, abi }) => !onlyHere || (arch === process.arch && abi === process.versions.modules),
  );
  const engines = [];
  for (const target of targets) {
    const file = await nativeEngine(PROJECT_ROOT, target);
    if (file !== null) engines.push({ file, target });
  }
  const to = args.includes('--to') ? (args[args.indexOf('--to') + 1] ?? '') : '';
  const out = to === '' ? join(PROJECT_ROOT, '.release') : to;
  const name = `boardcure-${versionOf(PROJECT_ROOT)}`;
  const folder = join(out, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  const packages = gather(PROJECT_ROOT, folder, engines);
  const file = join(out, `${name}.tar.gz`);
  await packTarball(folder, file, timeOfSources(PROJECT_ROOT));
  rmSync(folder, { recursive: true, force: true });
  const mib = (statSync(file).size / 1_048_576).toFixed(1);
  say(`${file}: ${mib} MiB, ${packages.length} packages, engines for`);
  for (const { target } of engines) say(`  ${target.arch}, Node ${target.node}`);
  if (engines.length < targets.length) process.exitCode = 1;
} catch (error) {
  endWithFault(error);
}
