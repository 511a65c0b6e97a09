import { BoardcureError, type FieldFault } from '../contract/problem.ts';
import type { SettingWish } from '../contract/setting.ts';
import { sentence } from '../wording/english.ts';
import { inRequest } from '../wording/field-sentence.ts';
import type { ChosenEntry, ChosenValue } from './chosen-file.ts';
import { settingFields } from './fields.ts';
import { whyOf, withChosen } from './lay-chosen.ts';
import { Settings } from './schema.ts';

type Tree = Record<string, unknown>;

export interface Choosing {
  /** What was chosen before, the oldest first. */
  readonly entries: readonly ChosenEntry[];
  /** Of those what holds. */
  readonly holding: ReadonlyMap<string, ChosenEntry>;
  /** Settings by file, environment and flags. */
  readonly tree: Tree;
  readonly given: ReadonlyMap<string, string>;
  /** ISO 8601, UTC. */
  readonly at: string;
  /** Name of the device; null for the computer itself. */
  readonly by: string | null;
}

/**
 * What is chosen once a wish is heard: all of it, or nothing.
 *
 * @returns the entries to be kept
 * @throws BoardcureError where a setting is not changed here, or its value does not fit, alone or
 *   together with the others
 */
export function chosenAfter(wish: SettingWish, choosing: Choosing): ChosenEntry[] {
  const { entries, holding, tree, given, at, by } = choosing;
  const asked = askedFor(wish);
  if (asked.size === 0) {
    throw new BoardcureError('BC_REQUEST_INVALID', sentence('settings-nothing-asked', {}), {
      pointer: '/settings',
    });
  }
  const known = new Set(entries.map(({ name }) => name));
  const fixed: FieldFault[] = [];
  const faults: FieldFault[] = [];
  const fresh: ChosenEntry[] = [];
  for (const [name, { pointer, value }] of asked) {
    const field = settingFields.get(name);
    // What was once chosen can always be let go of.
    if (value === undefined && known.has(name)) continue;
    const refusal = whyFixed(name, given);
    if (refusal !== null) {
      const fault = { pointer, detail: refusal.text, detailSaid: refusal };
      (field === undefined ? faults : fixed).push(fault);
    } else if (field !== undefined && value !== undefined) {
      const issues = field.schema.safeParse(value).error?.issues ?? [];
      faults.push(
        ...issues.map((issue) => faultAt([pointer, ...issue.path.map(String)].join('/'), issue)),
      );
      fresh.push({ name, value, at, by });
    }
  }
  const [firstFixed] = fixed;
  if (firstFixed?.detailSaid) {
    const { code, text, values = {} } = firstFixed.detailSaid;
    throw new BoardcureError('BC_SETTING_FIXED', { code, text, values }, { faults: fixed });
  }
  if (faults.length === 0) {
    const others = [...holding.values()].filter(({ name }) => !asked.has(name));
    const laid = Settings.safeParse(withChosen(tree, [...others, ...fresh]));
    for (const issue of laid.error?.issues ?? []) faults.push(...togetherFaults(issue, asked));
  }
  if (faults.length > 0) throw refused(faults);
  return [...entries.filter(({ name }) => !asked.has(name)), ...fresh];
}

/** By name: where it stands in the request, and its value; undefined for back to file or default. */
type Asked = Map<string, { pointer: string; value: ChosenValue | undefined }>;

function askedFor({ settings, nothing }: SettingWish): Asked {
  const asked: Asked = new Map();
  for (const [name, value] of Object.entries(settings)) {
    const pointer = `/settings/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    asked.set(name, { pointer, value: value ?? undefined });
  }
  nothing?.forEach((name, index) => {
    asked.set(name, { pointer: `/nothing/${index}`, value: null });
  });
  return asked;
}

function whyFixed(name: string, given: ReadonlyMap<string, string>) {
  const field = settingFields.get(name);
  if (field === undefined) return sentence('setting-unknown', { name });
  if (!field.onPage) return sentence('setting-by-hand', { name });
  const other = given.get(name);
  return other === undefined ? null : sentence('setting-given', { name, other });
}

type Issue = Parameters<typeof whyOf>[0];

function faultAt(pointer: string, issue: Issue): FieldFault {
  return { pointer, detail: issue.message, detailSaid: whyOf(issue) };
}

/** A fault between settings stands at each that was asked for in that section. */
function togetherFaults(issue: Issue, asked: Asked): FieldFault[] {
  const inSection = [...asked].filter(([name]) => name.split('.')[0] === String(issue.path[0]));
  const faulty = inSection.length > 0 ? inSection : [...asked];
  return faulty.map(([, { pointer }]) => faultAt(pointer, issue));
}

function refused(faults: readonly FieldFault[]): BoardcureError {
  const listed = faults.map(({ pointer, detail }) => `${pointer}: ${detail}`).join('; ');
  const said = { ...inRequest('body', faults), text: `In the body: ${listed}.` };
  return new BoardcureError('BC_REQUEST_INVALID', said, { faults });
}
