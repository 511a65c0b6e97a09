import type { z } from 'zod';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { fieldSentence } from '../wording/field-sentence.ts';
import type { ChosenEntry } from './chosen-file.ts';
import { settingFields } from './fields.ts';
import { Settings } from './schema.ts';

type Tree = Record<string, unknown>;

export interface LaidSettings {
  readonly settings: Settings;
  /** What was chosen and goes into the settings, by name. */
  readonly chosen: ReadonlyMap<string, ChosenEntry>;
  /** What was chosen and does not: what it names is as if nobody had chosen. */
  readonly setAside: readonly { readonly entry: ChosenEntry; readonly because: Said }[];
}

/** A tree of settings with what was chosen in it. */
export function withChosen(tree: Tree, entries: Iterable<ChosenEntry>): Tree {
  const laid = structuredClone(tree);
  for (const { name, value } of entries) {
    const path = name.split('.');
    const key = path.pop() ?? '';
    let at = laid;
    for (const part of path) {
      at[part] ??= {};
      at = at[part] as Tree;
    }
    at[key] = value;
  }
  return laid;
}

/** What zod found, as a sentence; the text is that of the schema, and in English. */
export function whyOf(issue: z.core.$ZodIssue): Said {
  const { code, message, path: _, ...params } = issue;
  return { ...fieldSentence(code, message, params), text: message };
}

/**
 * Lays what was chosen on the page over what stands in the file. What does not fit, alone or together
 * with the rest, is left out and named: a choice never keeps the daemon from starting.
 *
 * @param tree - settings by file, environment and flags, which fit
 * @param given - what environment and flags gave: it goes before any choice
 * @param entries - the oldest choice first; of two that do not go together the newer one holds
 */
export function layChosen(
  tree: Tree,
  given: ReadonlyMap<string, string>,
  entries: readonly ChosenEntry[],
): LaidSettings {
  const fitting = new Map<string, ChosenEntry>();
  const setAside: { entry: ChosenEntry; because: Said }[] = [];
  for (const entry of entries) {
    const because = whyNotAlone(entry);
    if (because !== null) setAside.push({ entry, because });
    else if (!given.has(entry.name)) fitting.set(entry.name, entry);
  }
  const parsed = () => Settings.safeParse(withChosen(tree, fitting.values()));
  let result = parsed();
  while (!result.success) {
    const [issue] = result.error.issues;
    const odd = issue && whatHinders(tree, [...fitting.values()], issue);
    // Without any choice they fit, so that something is left to be taken out.
    if (!odd) throw result.error;
    fitting.delete(odd.name);
    setAside.push({ entry: odd, because: whyOf(issue) });
    result = parsed();
  }
  return { settings: result.data, chosen: fitting, setAside };
}

function whyNotAlone({ name, value }: ChosenEntry): Said | null {
  const field = settingFields.get(name);
  if (field === undefined) return sentence('setting-unknown', { name });
  if (!field.onPage) return sentence('setting-by-hand', { name });
  const issue = field.schema.safeParse(value).error?.issues[0];
  return issue === undefined ? null : whyOf(issue);
}

/** The oldest choice in the faulty part without which that part fits; else the oldest there. */
function whatHinders(
  tree: Tree,
  entries: readonly ChosenEntry[],
  issue: z.core.$ZodIssue,
): ChosenEntry | undefined {
  const section = String(issue.path[0]);
  const there = entries.filter(({ name }) => name.split('.')[0] === section);
  const candidates = there.length > 0 ? there : entries;
  return (
    candidates.find((odd) => {
      const without = withChosen(
        tree,
        entries.filter((one) => one !== odd),
      );
      const issues = Settings.safeParse(without).error?.issues ?? [];
      return issues.every(({ path }) => path[0] !== issue.path[0]);
    }) ?? candidates[0]
  );
}
