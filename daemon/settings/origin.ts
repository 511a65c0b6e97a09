import { linesOf } from './file-lines.ts';

/** Where the value of a setting came from. */
export type SettingOrigin =
  | { readonly from: 'default' }
  | { readonly from: 'file'; readonly source: string; readonly line: number | null }
  | { readonly from: 'environment' | 'flag'; readonly source: string };

export interface SettingOrigins {
  /** The settings file; null without one. */
  readonly file: string | null;
  /** @param path - of a single setting */
  of(path: readonly string[]): SettingOrigin;
}

/** Where nothing is known of it: everything counts as a default. */
export const noOrigins: SettingOrigins = { file: null, of: () => ({ from: 'default' }) };

type Tree = Readonly<Record<string, unknown>>;

/** What was given, and by what, as it was read. */
export interface GivenSettings {
  readonly file: { readonly name: string; readonly text: string; readonly tree: Tree } | null;
  /** Flag or variable of a setting, by its path with dots. */
  readonly given: ReadonlyMap<string, string>;
}

/** Tells where each setting came from; what nothing gave is at its default. */
export function originsOf({ file, given }: GivenSettings): SettingOrigins {
  let lineOf: ReturnType<typeof linesOf> | null = null;
  const line = (path: readonly string[]): number | null => {
    if (file === null) return null;
    try {
      lineOf ??= linesOf(file.text);
      return lineOf(path);
    } catch {
      // What one reader takes for TOML another may not.
      return null;
    }
  };
  return {
    file: file?.name ?? null,
    of(path) {
      const by = given.get(path.join('.'));
      if (by !== undefined)
        return { from: by.startsWith('--') ? 'flag' : 'environment', source: by };
      if (file !== null && isIn(file.tree, path)) {
        return { from: 'file', source: file.name, line: line(path) };
      }
      return { from: 'default' };
    },
  };
}

function isIn(tree: Tree, path: readonly string[]): boolean {
  let at: unknown = tree;
  for (const name of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return false;
    at = (at as Tree)[name];
  }
  return true;
}
