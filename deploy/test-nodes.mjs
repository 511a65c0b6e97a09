import { cpSync, existsSync, mkdirSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { endWithFault, SetupFault } from './setup/fault.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { runProgram } from './setup/run-program.mjs';
import { say } from './setup/say.mjs';

/**
 * The tests on each Node that is supported, with the same lock file: Node itself comes from the npm
 * registry, which carries it as a package. Each gets a copy of the sources with modules of its own, since
 * the database engine is made for one Node. The first run of each takes some minutes; `.nodes` is kept.
 *
 *   npm run test:nodes [-- --only 22,24] [test/rules …]
 */
const SUPPORTED = ['20', '22', '24'];
const LEFT_BEHIND = new Set([
  '.build',
  '.git',
  '.install',
  '.nodes',
  '.release',
  'data',
  'node_modules',
]);

try {
  const args = process.argv.slice(2);
  const at = args.indexOf('--only');
  const majors = at === -1 ? SUPPORTED : (args[at + 1] ?? '').split(',');
  const rest = at === -1 ? args : args.filter((_, index) => index !== at && index !== at + 1);
  const failed = [];
  for (const major of majors) {
    say(`Node ${major}`);
    const bin = await fetched(major);
    const copy = copyOfSources(major);
    // The very command of every clone, under this Node: it installs, builds, checks and runs the suites.
    const env = {
      ...process.env,
      PATH: `${bin}${delimiter}${process.env.PATH}`,
      npm_execpath: undefined,
      // The headers for native modules lie in the same package; for 24 the installer sees to them.
      ...(major === '24' ? {} : { npm_config_nodedir: join(bin, '..') }),
    };
    const failure = await runProgram(join(bin, 'node'), ['deploy/test.mjs', ...rest], {
      cwd: copy,
      env,
    });
    if (failure !== null) failed.push(major);
    say(`Node ${major}: ${failure === null ? 'passed' : `failed (${failure})`}`);
  }
  if (failed.length > 0) process.exitCode = 1;
} catch (error) {
  endWithFault(error);
}

/**
 * @param {string} major
 * @returns {Promise<string>} the folder with this Node’s programs
 */
async function fetched(major) {
  const folder = join(PROJECT_ROOT, '.nodes', `node-${major}`);
  const bin = join(folder, 'package', 'bin');
  if (existsSync(join(bin, 'node'))) return bin;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const name = `node-${process.platform}-${process.arch}@${major}`;
  const failure = await runProgram('npm', ['pack', '--silent', name], { cwd: folder });
  const packed = readdirSync(folder).find((file) => file.endsWith('.tgz'));
  if (failure !== null || packed === undefined) {
    throw new SetupFault(`Node ${major} could not be fetched (${failure})`, {
      where: `package ${name}`,
      doThis: 'see that this computer reaches the npm registry',
    });
  }
  await runProgram('tar', ['xzf', packed], { cwd: folder });
  rmSync(join(folder, packed));
  // It has no npm of its own; any npm runs under any of these.
  for (const program of ['npm', 'npx']) {
    const own = join(process.execPath, '..', program);
    if (existsSync(own) && !existsSync(join(bin, program))) symlinkSync(own, join(bin, program));
  }
  return bin;
}

/**
 * The sources as they are now, in a folder that keeps what was installed there before.
 *
 * @param {string} major
 */
function copyOfSources(major) {
  const copy = join(PROJECT_ROOT, '.nodes', `sources-${major}`);
  mkdirSync(copy, { recursive: true });
  for (const name of readdirSync(copy)) {
    if (!LEFT_BEHIND.has(name)) rmSync(join(copy, name), { recursive: true });
  }
  for (const name of readdirSync(PROJECT_ROOT)) {
    if (!LEFT_BEHIND.has(name))
      cpSync(join(PROJECT_ROOT, name), join(copy, name), { recursive: true });
  }
  return copy;
}
