import { readFileSync } from 'node:fs';
import { isAbsolute, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { parse as parseToml, TomlError } from 'smol-toml';
import { z } from 'zod';
import { Settings } from './schema.ts';

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

/**
 * Settings from the file, the environment and the flags, the later ones winning.
 *
 * @throws SettingsError naming every fault at once
 */
export function loadSettings({ args, env, cwd }: SettingsSource): Settings {
  const faults: string[] = [];
  const given = readFlags(args);
  // A variable that is set to nothing counts as not set: that is how container files leave one out.
  const pick = (name: keyof typeof flags) =>
    given[name] ?? (env[`BOARDCURE_${name.toUpperCase()}`] || undefined);
  const file = pick('config');
  const tree: Tree = file === undefined ? {} : readFile(resolve(cwd, file));
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

  const parsed = Settings.safeParse(tree);
  if (!parsed.success) faults.push(z.prettifyError(parsed.error));
  if (!parsed.success || faults.length > 0) {
    throw new SettingsError(`The settings do not fit:\n${faults.join('\n')}`);
  }
  const settings = parsed.data;
  if (!isAbsolute(settings.data)) settings.data = resolve(cwd, settings.data);
  for (const part of Object.values(settings)) Object.freeze(part);
  return Object.freeze(settings);
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

function readFile(file: string): Tree {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (cause) {
    throw new SettingsError(
      `The settings file ${file} cannot be read: ${(cause as Error).message}. Check the name.`,
      { cause },
    );
  }
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
