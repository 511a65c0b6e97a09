import { stringify } from 'smol-toml';
import type { ListedSetting, SettingList } from '../contract/setting.ts';
import type { SettingOrigins } from './origin.ts';
import { Settings } from './schema.ts';
import { secretNames } from './secrets.ts';

/** The parts of a JSON Schema that are read here. */
interface Schema {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly description?: string;
  readonly default?: unknown;
  readonly unit?: string;
  readonly live?: boolean;
}

type Tree = Readonly<Record<string, unknown>>;

/** Read once: what settings there are does not change while the program runs. */
let schema: Schema | null = null;

/**
 * Every setting in force, where it came from, and what to write into the file to change it.
 *
 * @param settings - those in force
 * @param waiting - names of those that wait for the next start
 */
export function listSettings(
  settings: Settings,
  origins: SettingOrigins,
  waiting: readonly string[],
): SettingList {
  schema ??= Settings.toJSONSchema({ io: 'input' }) as Schema;
  return {
    file: origins.file,
    settings: leaves(schema, []).map(({ path, field }) => {
      const name = path.join('.');
      const [key = '', ...outer] = [...path].reverse();
      const section = outer.reverse().join('.');
      const value = valueAt(settings, path);
      const isSecret = secretNames.has(name);
      const origin = origins.of(path);
      const shown = isSecret ? null : masked(value);
      return {
        ...{ name, section, key, isSecret },
        description: field.description ?? '',
        ...limitsOf(field),
        value: shown as ListedSetting['value'],
        isSet: value !== null,
        default: (field.default ?? null) as ListedSetting['default'],
        from: origin.from,
        source: origin.from === 'default' ? null : origin.source,
        line: origin.from === 'file' ? origin.line : null,
        holds: field.live ? 'at-once' : 'next-start',
        waits: waiting.includes(name),
        toml: tomlLines(section, key, shown ?? example(field)),
      };
    }),
  };
}

function leaves(within: Schema, path: readonly string[]): { path: string[]; field: Schema }[] {
  return Object.entries(within.properties ?? {}).flatMap(([name, field]) =>
    field.properties ? leaves(field, [...path, name]) : [{ path: [...path, name], field }],
  );
}

function valueAt(tree: unknown, path: readonly string[]): unknown {
  let at = tree;
  for (const name of path) at = (at as Tree | undefined)?.[name];
  return at ?? null;
}

/** The choice that is not “nothing”. */
const meant = (field: Schema): Schema => field.anyOf?.find(({ type }) => type !== 'null') ?? field;

function limitsOf(
  field: Schema,
): Pick<ListedSetting, 'takes' | 'choices' | 'least' | 'most' | 'unit'> {
  const one = meant(field);
  const bound = (limit: number | undefined) =>
    limit === undefined || Math.abs(limit) === Number.MAX_SAFE_INTEGER ? null : limit;
  return {
    takes: takesOf(one),
    choices: (one.enum ?? []).map(String),
    least: bound(one.minimum ?? one.exclusiveMinimum),
    most: bound(one.maximum),
    unit: field.unit ?? one.unit ?? null,
  };
}

function takesOf({ type, enum: choices }: Schema): ListedSetting['takes'] {
  if (choices) return 'choice';
  switch (type) {
    case 'integer':
      return 'whole-number';
    case 'number':
      return 'number';
    case 'boolean':
      return 'yes-or-no';
    case 'array':
      return 'list';
    case 'object':
      return 'table';
    default:
      return 'text';
  }
}

/** An address without the name, the password and the query it may carry: they let others in. */
function masked(value: unknown): unknown {
  if (typeof value !== 'string' || !/^[a-z][a-z+.-]*:\/\//i.test(value)) return value;
  if (!URL.canParse(value)) return value;
  const url = new URL(value);
  if (url.username === '' && url.password === '' && url.search === '') return value;
  const inside = url.username === '' && url.password === '' ? '' : '…@';
  return `${url.protocol}//${inside}${url.host}${url.pathname}${url.search === '' ? '' : '?…'}`;
}

/** Something that fits where nothing is set. */
function example(field: Schema): unknown {
  const one = meant(field);
  switch (takesOf(one)) {
    case 'choice':
      return one.enum?.[0];
    case 'number':
    case 'whole-number':
      return one.minimum ?? one.exclusiveMinimum ?? 0;
    case 'yes-or-no':
      return false;
    case 'list':
      return [];
    case 'table':
      return {};
    default:
      return '…';
  }
}

function tomlLines(section: string, key: string, value: unknown): string {
  const line = stringify({ [key]: value }).trim();
  // A table within a section has a header of its own.
  if (section === '' || !line.startsWith('[')) {
    return section === '' ? line : `[${section}]\n${line}`;
  }
  return stringify(
    section.split('.').reduceRight<Tree>((inner, name) => ({ [name]: inner }), { [key]: value }),
  ).trim();
}
