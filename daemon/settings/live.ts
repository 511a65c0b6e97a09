import type { z } from 'zod';
import { settingFields, shapeOf } from './fields.ts';
import { Settings } from './schema.ts';

/** A setting that has another value now. */
export interface SettingChange {
  /** Its path with dots. */
  readonly name: string;
  /** True where it holds at once; else from the next start on. */
  readonly atOnce: boolean;
}

export interface LiveSettings {
  /** The settings that hold: those that can change while the daemon runs tell their newest value. */
  readonly settings: Settings;
  /**
   * Takes in what was read anew.
   *
   * @returns what differs from what holds, and from the last time
   */
  take(next: Settings): SettingChange[];
  /** What was taken in last: what will hold from the next start on. */
  newest(): Settings;
  /** Settings that were changed since the start and hold only from the next one on. */
  waiting(): string[];
}

type Tree = Readonly<Record<string, unknown>>;

/** Settings that can be read anew while the daemon runs. */
export function liveSettings(first: Settings): LiveSettings {
  let newest: Tree = first;
  const fields = [...settingFields.values()];

  /** The same tree, in which what can change is looked up each time. */
  function view(shape: z.ZodRawShape, started: Tree, path: readonly string[]): object {
    const tree = {};
    for (const [name, field] of Object.entries(shape)) {
      const inner = shapeOf(field);
      const at = [...path, name];
      const value = started[name];
      const part = inner && isTree(value) ? view(inner, value, at) : value;
      const get = settingFields.get(at.join('.'))?.atOnce ? () => valueAt(newest, at) : () => part;
      Object.defineProperty(tree, name, { get, enumerable: true });
    }
    return Object.freeze(tree);
  }

  return {
    settings: view(Settings.shape, first, []) as Settings,
    take(next) {
      const differing = fields.filter(
        ({ path }) => !isSame(valueAt(newest, path), valueAt(next, path)),
      );
      newest = next;
      return differing.map(({ name, atOnce }) => ({ name, atOnce }));
    },
    newest: () => newest as Settings,
    waiting: () =>
      fields
        .filter(
          ({ path, atOnce }) => !atOnce && !isSame(valueAt(first, path), valueAt(newest, path)),
        )
        .map(({ name }) => name),
  };
}

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function valueAt(tree: Tree, path: readonly string[]): unknown {
  let value: unknown = tree;
  for (const name of path) value = isTree(value) ? value[name] : undefined;
  return value;
}

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
