import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

type Tree = Record<string, unknown>;

interface SecretPlace {
  path: readonly string[];
  field: string;
  file: string;
  variable: string;
}

/** Where secrets may come from beside the settings file: the environment, or a file of their own. */
const places: readonly SecretPlace[] = [
  {
    path: ['notices', 'webhook'],
    field: 'secret',
    file: 'secretFile',
    variable: 'BOARDCURE_WEBHOOK_SECRET',
  },
  {
    path: ['notices', 'mail'],
    field: 'password',
    file: 'passwordFile',
    variable: 'BOARDCURE_MAIL_PASSWORD',
  },
];

/** Paths, with dots, of settings that nobody is told. */
export const secretNames: ReadonlySet<string> = new Set(
  places.map(({ path, field }) => [...path, field].join('.')),
);

/** The variable that gave a secret, by the secret’s path with dots. */
export function secretsGiven(env: NodeJS.ProcessEnv): [name: string, variable: string][] {
  return places
    .filter(({ variable }) => env[variable])
    .map(({ path, field, variable }) => [[...path, field].join('.'), variable]);
}

/**
 * Puts secrets that are kept elsewhere where the schema expects them.
 *
 * @param faults - gets a line for each file that cannot be read
 */
export function withSecrets(tree: Tree, env: NodeJS.ProcessEnv, cwd: string, faults: string[]) {
  for (const { path, field, file, variable } of places) {
    const given = path.reduce<unknown>((at, name) => (isTree(at) ? at[name] : undefined), tree);
    const named = isTree(given) ? given[file] : undefined;
    const text =
      env[variable] || (typeof named === 'string' ? readSecret(resolve(cwd, named), faults) : null);
    if (text) set(tree, path, field, text);
  }
}

function readSecret(file: string, faults: string[]): string | null {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch (cause) {
    faults.push(`✖ The file ${file} cannot be read: ${(cause as Error).message}. Check its name.`);
    return null;
  }
}

function set(tree: Tree, path: readonly string[], field: string, value: string): void {
  let at = tree;
  for (const name of path) {
    const next = isTree(at[name]) ? { ...(at[name] as Tree) } : {};
    at[name] = next;
    at = next;
  }
  at[field] = value;
}

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
