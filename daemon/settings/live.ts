import type { z } from 'zod';
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
  /** Settings that were changed since the start and hold only from the next one on. */
  waiting(): string[];
}

type Tree = Readonly<Record<string, unknown>>;

/** Settings that can be read anew while the daemon runs. */
export function liveSettings(first: Settings): LiveSettings {
  let newest: Tree = first;

  /** The same tree, in which what can change is looked up each time. */
  function view(shape: z.ZodRawShape, started: Tree, path: readonly string[]): object {
    const tree = {};
    for (const [name, field] of Object.entries(shape)) {
      const inner = shapeOf(field);
      const at = [...path, name];
      const value = started[name];
      const part = inner && isTree(value) ? view(inner, value, at) : value;
      const get = isLive(field) ? () => valueAt(newest, at) : () => part;
      Object.defineProperty(tree, name, { get, enumerable: true });
    }
    return Object.freeze(tree);
  }

  return {
    settings: view(Settings.shape, first, []) as Settings,
    take(next) {
      const differing = leaves(Settings.shape, []).filter(
        ({ path }) => !isSame(valueAt(newest, path), valueAt(next, path)),
      );
      newest = next;
      return differing.map(({ path, atOnce }) => ({ name: path.join('.'), atOnce }));
    },
    waiting: () =>
      leaves(Settings.shape, [])
        .filter(
          ({ path, atOnce }) => !atOnce && !isSame(valueAt(first, path), valueAt(newest, path)),
        )
        .map(({ path }) => path.join('.')),
  };
}

/** Every single setting: where it stands, and whether a change holds at once. */
function leaves(
  shape: z.ZodRawShape,
  within: readonly string[],
): { path: readonly string[]; atOnce: boolean }[] {
  return Object.entries(shape).flatMap(([name, field]) => {
    const path = [...within, name];
    const inner = shapeOf(field);
    return inner ? leaves(inner, path) : [{ path, atOnce: isLive(field) }];
  });
}

/** Whether a field is marked as one that can change while the daemon runs. */
const isLive = (field: unknown): boolean => (field as z.ZodType).meta()?.live === true;

/** The fields of a section; null where a field is no section. */
function shapeOf(field: unknown): z.ZodRawShape | null {
  const inner =
    typeof field === 'object' && field !== null && 'unwrap' in field
      ? (field as z.ZodOptional).unwrap()
      : field;
  return typeof inner === 'object' && inner !== null && 'shape' in inner
    ? (inner as z.ZodObject).shape
    : null;
}

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function valueAt(tree: Tree, path: readonly string[]): unknown {
  let value: unknown = tree;
  for (const name of path) value = isTree(value) ? value[name] : undefined;
  return value;
}

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
