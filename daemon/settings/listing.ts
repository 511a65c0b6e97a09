import { stringify } from 'smol-toml';
import type { ListedSetting, SettingList } from '../contract/setting.ts';
import { sentence } from '../wording/english.ts';
import type { ChosenEntry } from './chosen-file.ts';
import { settingFields } from './fields.ts';
import type { GroundSettings, laidOn } from './load.ts';
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
  readonly onPage?: boolean;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
}

type Tree = Readonly<Record<string, unknown>>;

/** Read once: what settings there are does not change while the program runs. */
let schema: Schema | null = null;

/** Where settings come from: file, environment and flags, and what was chosen over them. */
interface Layers {
  readonly ground: GroundSettings;
  readonly laid: ReturnType<typeof laidOn>;
}

interface ListParts {
  /** Those in force. */
  readonly settings: Settings;
  /** Those from the next start on. */
  readonly next: Settings;
  /** Names of those that wait for the next start. */
  readonly waiting: readonly string[];
  /** What those that wait still come from. */
  readonly atStart: Layers;
  readonly newest: Layers;
}

/** Every setting in force, where it came from, and how it is changed. */
export function listSettings({ settings, next, waiting, atStart, newest }: ListParts): SettingList {
  schema ??= Settings.toJSONSchema({ io: 'input' }) as Schema;
  const { file, setAside } = newest.laid;
  return {
    file: newest.ground.origins.file,
    settings: leaves(schema, []).map(({ path, field }) => {
      const name = path.join('.');
      const [key = '', ...outer] = [...path].reverse();
      const section = outer.reverse().join('.');
      const isSecret = secretNames.has(name);
      const told = (value: unknown) => (isSecret ? null : masked(value)) as ListedSetting['value'];
      const value = valueAt(settings, path);
      const waits = waiting.includes(name);
      const below = newest.ground.origins.of(path);
      return {
        ...{ name, section, key, isSecret },
        description: field.description ?? '',
        ...limitsOf(field),
        value: told(value),
        isSet: value !== null,
        default: (field.default ?? null) as ListedSetting['default'],
        ...originOf(path, waits ? atStart : newest),
        holds: field.live ? 'at-once' : 'next-start',
        waits,
        next: told(valueAt(next, path)),
        changes: newest.ground.given.has(name) ? 'at-start' : field.onPage ? 'here' : 'by-hand',
        ...chosenOf(newest.laid.chosen.get(name)),
        otherwise: told(valueAt(newest.ground.settings, path)),
        otherwiseFrom: below.from === 'file' ? 'file' : 'default',
        toml: tomlLines(section, key, told(value) ?? example(field)),
      };
    }),
    chosenFault: file.fault === null ? null : sentence('chosen-damaged', { found: file.fault }),
    setAside: setAside.map(({ entry: { name, value }, because }) => ({
      ...{ name, because },
      // What was written in by hand may be a secret.
      value: settingFields.get(name)?.onPage ? (value as ListedSetting['value']) : null,
    })),
  };
}

const chosenOf = (choice: ChosenEntry | undefined) => ({
  isChosen: choice !== undefined,
  chosenAt: choice?.at ?? null,
  chosenBy: choice?.by ?? null,
});

function originOf(
  path: readonly string[],
  { ground, laid }: Layers,
): Pick<ListedSetting, 'from' | 'source' | 'line'> {
  const choice = laid.chosen.get(path.join('.'));
  if (choice) return { from: 'chosen', source: choice.by, line: null };
  const origin = ground.origins.of(path);
  return {
    from: origin.from,
    source: origin.from === 'default' ? null : origin.source,
    line: origin.from === 'file' ? origin.line : null,
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
): Pick<
  ListedSetting,
  'takes' | 'choices' | 'least' | 'most' | 'unit' | 'entries' | 'mayBeNothing'
> {
  const one = meant(field);
  return {
    ...boundsOf(one),
    unit: field.unit ?? one.unit ?? null,
    entries:
      one.items === undefined
        ? null
        : {
            ...boundsOf(one.items),
            fewest: one.minItems ?? null,
            atMost: one.maxItems ?? null,
          },
    mayBeNothing: field.anyOf?.some(({ type }) => type === 'null') ?? false,
  };
}

function boundsOf(one: Schema): Pick<ListedSetting, 'takes' | 'choices' | 'least' | 'most'> {
  const bound = (limit: number | undefined) =>
    limit === undefined || Math.abs(limit) === Number.MAX_SAFE_INTEGER ? null : limit;
  return {
    takes: takesOf(one),
    choices: (one.enum ?? []).map(String),
    least: bound(one.minimum ?? one.exclusiveMinimum),
    most: bound(one.maximum),
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
