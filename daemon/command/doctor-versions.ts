import { readFileSync } from 'node:fs';
import { ownManifest } from '../own-version.ts';
import { tryEngine } from '../store/backup-look.ts';
import { type Finding, look, ok, wrong } from './doctor-finding.ts';

/** The oldest Node that the program runs on. */
const oldestNode = 20;

/** Looks whether Node, the database engine and the packages are those that the program wants. */
export function lookAtVersions(): Finding[] {
  return [nodeVersion(), engine(), packages()];
}

function nodeVersion(): Finding {
  const { node } = process.versions;
  return Number(node.split('.')[0]) >= oldestNode
    ? ok('versions', `Node ${node} is new enough.`)
    : wrong('versions', `Node ${node} is too old.`, `Install Node ${oldestNode} or newer.`);
}

function engine(): Finding {
  try {
    return ok('versions', `The database engine loads (SQLite ${tryEngine()}).`);
  } catch (cause) {
    return wrong(
      'versions',
      `The database engine does not load: ${firstLine(cause)}`,
      'Install it again for this Node: with install.sh of the artefact, or from the sources with npm start and a network connection.',
    );
  }
}

function packages(): Finding {
  const own = ownManifest();
  if (!own) {
    return look(
      'versions',
      "The program's list of packages cannot be read: no package.json of its own is there.",
      'Install the program again if it does not start.',
    );
  }
  const { version, dependencies: wanted = {}, folder } = own;
  const differing = Object.entries(wanted)
    .map(([name, version]) => ({ name, version, installed: installedVersion(name, folder) }))
    .filter(({ version, installed }) => installed !== version);
  if (differing.length === 0) {
    const count = Object.keys(wanted).length;
    return ok('versions', `Boardcure ${version} with its ${count} packages as they should be.`);
  }
  const named = differing.map(
    ({ name, version, installed }) => `${name} is ${installed ?? 'missing'}, not ${version}`,
  );
  return look(
    'versions',
    `Packages differ from what this program was tried with: ${named.join('; ')}.`,
    'Install it again: with install.sh of the artefact, or from the sources with npm start and a network connection.',
  );
}

function installedVersion(name: string, folder: URL): string | null {
  try {
    const file = new URL(`node_modules/${name}/package.json`, folder);
    return JSON.parse(readFileSync(file, 'utf8')).version;
  } catch {
    return null;
  }
}

const firstLine = (cause: unknown): string =>
  (cause instanceof Error ? cause.message : String(cause)).split('\n')[0] ?? '';
