import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readlinkSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));

/** A computer's root in a folder, with an installer that works in it and a service manager of ours. */
export interface InstalledRoot {
  readonly folder: string;
  /** Runs the installer that lies in an artefact. */
  install(artefact: string, ...words: string[]): SpawnSyncReturns<string>;
  /** Lays out an artefact of a version; its programs are those that the build made. */
  artefact(version: string, unit?: string): string;
  path(name: string): string;
  text(name: string): string;
  /** The version that a link names. */
  version(link: string): string | null;
  /** What the service manager was asked since the last look. */
  asked(): string[];
  /** Versions whose service does not get ready, and what happens as it tries, as a shell command. */
  failing(version: string, meanwhile?: string): void;
  /** Puts a program before all others, as a shell script. */
  program(name: string, script: string): string;
  remove(): void;
}

const SYSTEMCTL = `#!/bin/sh
echo "$*" >>"$FAKE/asked"
case $1 in
  start)
    version=$(basename "$(readlink "$DESTDIR/opt/boardcure/current")")
    if [ -f "$FAKE/failing-$version" ]; then . "$FAKE/failing-$version"; exit 1; fi ;;
esac
exit 0
`;

export function installedRoot(): InstalledRoot {
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-root-'));
  const root = join(folder, 'root');
  const fake = join(folder, 'fake');
  mkdirSync(root);
  mkdirSync(join(fake, 'bin'), { recursive: true });

  function program(name: string, script: string): string {
    const file = join(fake, 'bin', name);
    writeFileSync(file, script);
    chmodSync(file, 0o755);
    return file;
  }
  const systemctl = program('fake-systemctl', SYSTEMCTL);
  const path = (name: string) => join(root, name);

  return {
    folder,
    path,
    program,
    install: (artefact, ...words) =>
      spawnSync('sh', [join(artefact, 'install.sh'), ...words], {
        encoding: 'utf8',
        env: {
          ...process.env,
          PATH: `${join(fake, 'bin')}:${dirname(process.execPath)}:${process.env.PATH}`,
          DESTDIR: root,
          BOARDCURE_SYSTEMCTL: systemctl,
          FAKE: fake,
        },
      }),
    artefact(version, unit = readFileSync(join(PROJECT, 'deploy/boardcure.service'), 'utf8')) {
      const at = join(folder, `boardcure-${version}`);
      const write = (name: string, text: string, mode = 0o644) => {
        mkdirSync(dirname(join(at, name)), { recursive: true });
        writeFileSync(join(at, name), text, { mode });
      };
      const cli = join(PROJECT, '.build/bundle/cli.js');
      write('package.json', JSON.stringify({ name: 'boardcure', version, type: 'module' }));
      write(
        'program/boardcure.mjs',
        `const { run } = await import(${JSON.stringify(cli)});\nawait run(process.argv.slice(2));\n`,
      );
      for (const name of ['better-sqlite3', 'smol-toml']) {
        const from = join(PROJECT, 'node_modules', name);
        cpSync(from, join(at, 'node_modules', name), {
          recursive: true,
          filter: (file) =>
            !/better-sqlite3\/(?:deps|src|build\/(?!Release(?:\/better_sqlite3\.node)?$))/.test(
              file,
            ),
        });
      }
      cpSync(join(PROJECT, 'node_modules/bindings'), join(at, 'node_modules/bindings'), {
        recursive: true,
      });
      cpSync(
        join(PROJECT, 'node_modules/file-uri-to-path'),
        join(at, 'node_modules/file-uri-to-path'),
        { recursive: true },
      );
      cpSync(join(PROJECT, 'deploy/install.sh'), join(at, 'install.sh'));
      cpSync(join(PROJECT, 'deploy/bin/boardcure'), join(at, 'bin/boardcure'));
      write('deploy/boardcure.service', unit);
      return at;
    },
    text: (name) => readFileSync(path(name), 'utf8'),
    version(link) {
      const file = path(join('opt/boardcure', link));
      return existsSync(file) ? (readlinkSync(file).split('/').at(-1) ?? null) : null;
    },
    asked() {
      const file = join(fake, 'asked');
      if (!existsSync(file)) return [];
      const lines = readFileSync(file, 'utf8').trim().split('\n');
      rmSync(file);
      return lines;
    },
    failing: (version, meanwhile = 'true') =>
      writeFileSync(join(fake, `failing-${version}`), `${meanwhile}\n`),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
