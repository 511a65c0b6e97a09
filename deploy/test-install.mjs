import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { versionOf } from './release/gather.mjs';
import { endWithFault, SetupFault } from './setup/fault.mjs';
import { programPath } from './setup/program-path.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { runProgram } from './setup/run-program.mjs';
import { say } from './setup/say.mjs';

/**
 * From bare Debian packages to a running service: a fresh Debian is fetched from its mirror, booted in
 * a container of systemd, and the artefact is installed, upgraded and removed there. Needs root, a
 * mirror and some minutes, so it is no part of `npm test`.
 *
 *   npm run test:install [-- --suite trixie] [--artefact file] [--node file]
 *
 * `--node` is for a suite whose own Node is too old: that one is given to the installer instead.
 */
const BASE = ['systemd', 'systemd-sysv', 'dbus', 'procps', 'curl', 'ca-certificates'];

try {
  const option = (/** @type {string} */ name) => {
    const at = process.argv.indexOf(`--${name}`);
    return at === -1 ? undefined : process.argv[at + 1];
  };
  const suite = option('suite') ?? 'trixie';
  const node = option('node');
  needs();
  const folder = mkdtempSync('/var/tmp/boardcure-trial-');
  try {
    const artefact = option('artefact') ?? (await madeArtefact(folder));
    const root = join(folder, 'root');
    say(`fetching Debian ${suite}`);
    const packages = [...BASE, ...(node === undefined ? ['nodejs'] : [])].join(',');
    await must('mmdebstrap', [
      '--variant=minbase',
      '--quiet',
      `--include=${packages}`,
      suite,
      root,
    ]);
    await layOut(root, artefact, node);
    say('booting it');
    await boot(root);
    const log = readFileSync(join(root, 'trial/log'), 'utf8');
    process.stdout.write(log);
    if (!log.endsWith('TRIAL PASSED\n')) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
} catch (error) {
  endWithFault(error);
}

function needs() {
  const missing = ['mmdebstrap', 'systemd-nspawn', 'tar'].filter(
    (one) => programPath(one) === null,
  );
  if (process.getuid?.() === 0 && missing.length === 0) return;
  throw new SetupFault(`this needs ${['root', ...missing].join(', ')}`, {
    where: 'deploy/test-install.mjs',
    doThis: 'run it as root; Debian: apt-get install mmdebstrap systemd-container',
  });
}

/** @param {string} folder */
async function madeArtefact(folder) {
  await must(process.execPath, [join(PROJECT_ROOT, 'deploy/release.mjs'), '--to', folder]);
  return join(folder, `boardcure-${versionOf(PROJECT_ROOT)}.tar.gz`);
}

/**
 * Puts the installer, three artefacts and what is to be done into the fresh root.
 *
 * @param {string} root
 * @param {string} artefact
 * @param {string | undefined} node
 */
async function layOut(root, artefact, node) {
  const trial = join(root, 'trial');
  mkdirSync(trial);
  const version = versionOf(PROJECT_ROOT);
  cpSync(artefact, join(trial, 'one.tar.gz'));
  cpSync(join(PROJECT_ROOT, 'deploy/trial/inside.sh'), join(trial, 'inside.sh'));
  cpSync(join(PROJECT_ROOT, 'deploy/install.sh'), join(trial, 'installer.sh'));
  const words = node === undefined ? '' : ' --node /trial/node';
  if (node !== undefined) {
    cpSync(node, join(trial, 'node'));
    // The trial itself speaks JavaScript too.
    cpSync(node, join(root, 'usr/local/bin/node'));
  }
  writeFileSync(
    join(trial, 'install.sh'),
    `#!/bin/sh\nexec sh /trial/installer.sh "$@"${words}\n`,
    {
      mode: 0o755,
    },
  );
  await changed(trial, 'two', `${version}-trial.2`);
  writeFileSync(join(trial, 'two.version'), `${version}-trial.2`);
  await changed(trial, 'broken', `${version}-trial.3`, 'process.exit(1);\n');
  writeFileSync(
    join(root, 'etc/systemd/system/trial.service'),
    '[Unit]\nAfter=multi-user.target\n[Service]\nType=oneshot\nExecStart=/trial/inside.sh\n[Install]\nWantedBy=multi-user.target\n',
  );
  await must('chroot', [root, 'systemctl', 'enable', '--quiet', 'trial.service']);
}

/**
 * Makes another version of the artefact, as a later release would be.
 *
 * @param {string} trial
 * @param {string} name
 * @param {string} version
 * @param {string} [program] what starts in place of the program
 */
async function changed(trial, name, version, program) {
  const folder = join(trial, name);
  mkdirSync(folder);
  const tar = ['-xzf', join(trial, 'one.tar.gz'), '-C', folder, '--strip-components=1'];
  await must('tar', tar);
  const file = join(folder, 'package.json');
  const own = JSON.parse(readFileSync(file, 'utf8'));
  writeFileSync(file, JSON.stringify({ ...own, version }));
  if (program !== undefined) {
    const start = join(folder, 'program/boardcure.mjs');
    // Only the service fails; what copies and puts back the database works as before.
    const text = readFileSync(start, 'utf8');
    writeFileSync(start, `if (process.argv[2] === 'serve') ${program}${text}`);
  }
  await must('tar', ['-czf', join(trial, `${name}.tar.gz`), '-C', trial, name]);
  rmSync(folder, { recursive: true });
}

/** @param {string} root */
async function boot(root) {
  const words = [
    '--directory',
    root,
    '--boot',
    '--register=no',
    '--keep-unit',
    '--private-network',
  ];
  const quiet = ['--console=pipe', '--quiet', '--link-journal=no'];
  const ended = spawnSync('systemd-nspawn', [...words, ...quiet], {
    stdio: ['ignore', 'ignore', 'inherit'],
    timeout: 15 * 60_000,
  });
  if (existsSync(join(root, 'trial/log'))) return;
  throw new SetupFault(`the fresh Debian did not boot (${ended.error?.message ?? ended.status})`, {
    where: root,
    doThis:
      'systemd-nspawn needs a kernel with control groups and namespaces; try it on another computer',
  });
}

/**
 * @param {string} program
 * @param {string[]} args
 */
async function must(program, args) {
  const failure = await runProgram(program, args, { cwd: '/' });
  if (failure === null) return;
  throw new SetupFault(`${program} ended with ${failure}`, {
    where: args.join(' '),
    doThis: 'its own words are above',
  });
}
