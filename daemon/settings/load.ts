import { readFileSync } from 'node:fs';
import { isAbsolute, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { parse as parseToml, TomlError } from 'smol-toml';
import { type ChosenFile, chosenFileIn, readChosen } from './chosen-file.ts';
import { faultLines } from './fault-lines.ts';
import { type LaidSettings, layChosen } from './lay-chosen.ts';
import { originsOf, type SettingOrigins } from './origin.ts';
import { Settings } from './schema.ts';
import { secretsGiven, withSecrets } from './secrets.ts';

/** A fault in what the operator gave; the message says what, where and what to do. */
export class SettingsError extends Error {
  override name = 'SettingsError';
}

export interface SettingsSource {
  args: string[];
  env: NodeJS.ProcessEnv;
  cwd: string;
}

const flags = {
  data: { type: 'string' },
  http: { type: 'string' },
  mqtt: { type: 'string' },
  site: { type: 'string' },
  config: { type: 'string' },
} as const;

type Tree = Record<string, unknown>;

/** What stands in the file and was given at the start: it fits, also without what was chosen. */
export interface GroundSettings {
  /** As the schema takes them. */
  readonly tree: Tree;
  readonly settings: Settings;
  /** Flag or variable of a setting, by its name. */
  readonly given: ReadonlyMap<string, string>;
  readonly origins: SettingOrigins;
}

/**
 * Settings from the file, what was chosen on the page, the environment and the flags, the later ones
 * winning.
 *
 * @throws SettingsError naming every fault at once
 */
export const loadSettings = (source: SettingsSource): Settings =>
  laidOn(readGround(source)).settings;

/** Settings with what was chosen on the page, and what of that does not hold. */
export function laidOn(ground: GroundSettings): LaidSettings & { file: ChosenFile } {
  const file = readChosen(chosenFileIn(ground.settings.data));
  const laid = layChosen(ground.tree, ground.given, file.entries);
  return { ...laid, settings: frozen({ ...laid.settings, data: ground.settings.data }), file };
}

function frozen(settings: Settings): Settings {
  for (const part of Object.values(settings)) Object.freeze(part);
  return Object.freeze(settings);
}

/**
 * Settings without what was chosen on the page, with where each came from.
 *
 * @throws SettingsError naming every fault at once
 */
export function readGround({ args, env, cwd }: SettingsSource): GroundSettings {
  const faults: string[] = [];
  const given = readFlags(args);
  // A variable that is set to nothing counts as not set: that is how container files leave one out.
  const pick = (name: keyof typeof flags) =>
    given[name] ?? (env[`BOARDCURE_${name.toUpperCase()}`] || undefined);
  const file = pick('config');
  const text = file === undefined ? null : textOf(resolve(cwd, file));
  const tree: Tree = file === undefined || text === null ? {} : parsedFile(file, text);
  const ofFile: Tree = structuredClone(tree);
  const data = pick('data');
  if (data !== undefined) tree.data = data;
  const site = pick('site');
  if (site !== undefined) tree.site = site;
  const http = pick('http');
  if (http !== undefined) tree.http = { ...branch(tree, 'http'), ...address('http', http, faults) };
  const mqtt = pick('mqtt');
  if (mqtt !== undefined) {
    const isUrl = /^[a-z]+:\/\//i.test(mqtt);
    const own = isUrl ? { external: mqtt } : { external: null, ...address('mqtt', mqtt, faults) };
    tree.mqtt = { ...branch(tree, 'mqtt'), ...own };
  }
  const level = env.BOARDCURE_LOG;
  if (level) tree.log = { ...branch(tree, 'log'), level };

  withSecrets(tree, env, cwd, faults);

  const parsed = Settings.safeParse(tree);
  const origin = file === undefined || text === null ? null : { name: file, text, tree: ofFile };
  const from = givenBy((name) => pick(name), given, tree, level);
  if (!parsed.success) {
    faults.push(...faultLines(parsed.error, { file: origin, given: from }));
  }
  if (!parsed.success || faults.length > 0) {
    throw new SettingsError(`The settings do not fit:\n${faults.join('\n')}`);
  }
  const settings = parsed.data;
  if (!isAbsolute(settings.data)) settings.data = resolve(cwd, settings.data);
  for (const [name, variable] of secretsGiven(env)) from.set(name, variable);
  const origins = originsOf({ file: origin, given: from });
  return { tree, settings: frozen(settings), given: from, origins };
}

function readFlags(args: string[]): Partial<Record<keyof typeof flags, string>> {
  try {
    return parseArgs({ args, options: flags, allowPositionals: false, strict: true }).values;
  } catch (cause) {
    throw new SettingsError(
      `${cause instanceof Error ? cause.message : cause} Known flags: ${Object.keys(flags)
        .map((name) => `--${name}`)
        .join(', ')}.`,
      { cause },
    );
  }
}

/** Which flag or variable gave which settings. */
function givenBy(
  pick: (name: keyof typeof flags) => string | undefined,
  byFlag: Partial<Record<string, string>>,
  tree: Tree,
  level: string | undefined,
): Map<string, string> {
  const from = new Map<string, string>();
  const note = (name: keyof typeof flags, ...paths: string[]) => {
    if (pick(name) === undefined) return;
    const by = byFlag[name] === undefined ? `BOARDCURE_${name.toUpperCase()}` : `--${name}`;
    for (const path of paths) from.set(path, by);
  };
  note('data', 'data');
  note('site', 'site');
  note('http', 'http.port', ...(namesHost(pick('http')) ? ['http.host'] : []));
  // Of the two only one comes from the flag; the other is as the file has it.
  const isOwn = branch(tree, 'mqtt').external === null;
  const own = namesHost(pick('mqtt')) ? ['mqtt.port', 'mqtt.host'] : ['mqtt.port'];
  note('mqtt', ...(isOwn ? own : ['mqtt.external']));
  if (level) from.set('log.level', 'BOARDCURE_LOG');
  return from;
}

const namesHost = (address: string | undefined): boolean => address?.includes(':') === true;

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (cause) {
    throw new SettingsError(
      `The settings file ${file} cannot be read: ${(cause as Error).message}. Check the name.`,
      { cause },
    );
  }
}

function parsedFile(file: string, text: string): Tree {
  try {
    return parseToml(text);
  } catch (cause) {
    if (!(cause instanceof TomlError)) throw cause;
    throw new SettingsError(
      `The settings file ${file} is not TOML at line ${cause.line}, column ${cause.column}: ${cause.message}`,
      { cause },
    );
  }
}

function branch(tree: Tree, name: string): Tree {
  const value = tree[name];
  return typeof value === 'object' && value !== null ? (value as Tree) : {};
}

/** `port`, `host:port` or `[v6]:port`; anything else is added to the faults. */
function address(flag: string, text: string, faults: string[]): { host?: string; port?: number } {
  const match = /^(?:(?<host>\[[0-9a-fA-F:]+\]|[^:\s]+):)?(?<port>\d{1,5})$/.exec(text.trim());
  if (!match?.groups) {
    const url = flag === 'mqtt' ? ', or mqtt://host:port of another broker' : '';
    faults.push(
      `✖ --${flag} is "${text}", but it takes a port or host:port, for example 8080, 127.0.0.1:8080 or [::1]:8080${url}.`,
    );
    return {};
  }
  const host = match.groups.host?.replace(/^\[|\]$/g, '');
  return { ...(host === undefined ? {} : { host }), port: Number(match.groups.port) };
}
