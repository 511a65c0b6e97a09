import { cpSync, existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fetchHeaders } from '../setup/node-headers.mjs';
import { programPath } from '../setup/program-path.mjs';
import { readJson } from '../setup/read-json.mjs';
import { runProgram } from '../setup/run-program.mjs';
import { say } from '../setup/say.mjs';

const FILE = 'better_sqlite3.node';

/** Compilers for a board of another kind than this computer, as Debian names them. */
const CROSS = {
  x64: { prefix: 'x86_64-linux-gnu-', debian: 'g++-x86-64-linux-gnu' },
  arm64: { prefix: 'aarch64-linux-gnu-', debian: 'g++-aarch64-linux-gnu' },
};

/**
 * Brings the database engine for one board and Node: what the package’s maker offers ready-made, or
 * compiled here. Kept, so that the next release of the same engine needs neither.
 *
 * @param {string} root the project’s folder, with its npm modules installed
 * @param {import('./native-targets.mjs').NativeTarget} target
 * @returns {Promise<string | null>} the file; null when it could not be had, which is said
 */
export async function nativeEngine(root, target) {
  const source = join(root, 'node_modules/better-sqlite3');
  const { version } = readJson(join(source, 'package.json'));
  const name = `node-v${target.abi}-linux-${target.arch}`;
  const kept = join(root, '.release/native', `better-sqlite3-${version}`, name, FILE);
  if (existsSync(kept)) return kept;
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-engine-'));
  try {
    const made = await engineFile(root, source, folder, target);
    if (made === null) {
      say(`NOT IN THE ARTEFACT: the database engine for ${target.arch} and Node ${target.node}`);
      return null;
    }
    await strip(made, target.arch);
    mkdirSync(dirname(kept), { recursive: true });
    cpSync(made, `${kept}.new`);
    renameSync(`${kept}.new`, kept);
    return kept;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {string} root
 * @param {string} source
 * @param {string} folder
 * @param {import('./native-targets.mjs').NativeTarget} target
 */
async function engineFile(root, source, folder, { arch, node, abi }) {
  const made = join(folder, 'build/Release', FILE);
  if (arch === process.arch && abi === process.versions.modules) {
    const own = join(source, 'build/Release', FILE);
    mkdirSync(dirname(made), { recursive: true });
    if (existsSync(own)) cpSync(own, made);
    return existsSync(own) ? made : null;
  }
  cpSync(source, folder, {
    recursive: true,
    filter: (path) => path !== join(source, 'build'),
  });
  const prebuild = join(root, 'node_modules/prebuild-install/bin.js');
  say(`looking for a ready-made database engine for ${arch} and Node ${node}`);
  const wanted = ['--platform', 'linux', '--arch', arch, '--target', `${node}.0.0`];
  await runProgram(process.execPath, [prebuild, ...wanted], { cwd: folder });
  if (existsSync(made)) return made;
  return (await compile(folder, arch, node)) ? made : null;
}

/**
 * Compiles with the headers of the Node in question, which the npm registry carries.
 *
 * @param {string} folder
 * @param {'x64' | 'arm64'} arch
 * @param {number} node
 */
async function compile(folder, arch, node) {
  const { prefix, debian } = CROSS[arch];
  const tools = arch === process.arch ? '' : prefix;
  if (programPath(`${tools}g++`) === null) {
    say(`no compiler for ${arch} (Debian: apt-get install ${debian})`);
    return false;
  }
  const gyp = nodeGyp();
  if (gyp === null) {
    say('npm’s node-gyp was not found beside this Node');
    return false;
  }
  say(`compiling the database engine for ${arch} and Node ${node}; some minutes`);
  const headers = await fetchHeaders(join(folder, 'headers'), arch, String(node));
  if (headers === null) return false;
  const failure = await runProgram(
    process.execPath,
    [gyp, 'rebuild', '--release', `--arch=${arch}`, `--nodedir=${headers}`],
    {
      cwd: folder,
      env: {
        ...process.env,
        CC: `${tools}gcc`,
        CXX: `${tools}g++`,
        AR: `${tools}ar`,
        // The folder’s name, which is another each time, must not get into the file.
        CXXFLAGS: `-ffile-prefix-map=${folder}=.`,
        CFLAGS: `-ffile-prefix-map=${folder}=.`,
      },
    },
  );
  if (failure !== null) say(`compiling failed (${failure}); node-gyp’s own words are above`);
  return failure === null;
}

/** npm’s own node-gyp, wherever this Node keeps npm. */
function nodeGyp() {
  const npm = process.env.npm_execpath ?? '';
  const places = [
    join(dirname(dirname(npm)), 'node_modules/node-gyp/bin/node-gyp.js'),
    join(process.execPath, '../../lib/node_modules/npm/node_modules/node-gyp/bin/node-gyp.js'),
    '/usr/share/nodejs/node-gyp/bin/node-gyp.js',
  ];
  return places.find((place) => existsSync(place)) ?? null;
}

/**
 * Names of functions help nobody on a board, and are most of the file.
 *
 * @param {string} file
 * @param {'x64' | 'arm64'} arch
 */
async function strip(file, arch) {
  const tool = arch === process.arch ? 'strip' : `${CROSS[arch].prefix}strip`;
  if (programPath(tool) === null) return;
  await runProgram(tool, ['--strip-unneeded', file], { cwd: dirname(file) });
}
