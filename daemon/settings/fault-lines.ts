import { basename } from 'node:path';
import type { z } from 'zod';
import { type LineOf, linesOf } from './file-lines.ts';

/** Where settings came from, to say where a faulty one stands. */
export interface SettingsOrigin {
  /** The settings file, if there is one. */
  file: { name: string; text: string } | null;
  /** The flag or variable that gave a setting, by the setting’s path with dots. */
  given: ReadonlyMap<string, string>;
}

/**
 * Every fault of settings as a line of its own: where the setting stands, its name, what is wrong.
 *
 * @param error - what the schema found
 */
export function faultLines(error: z.ZodError, { file, given }: SettingsOrigin): string[] {
  const lineOf = file === null ? () => null : linesIn(file.text);
  const faults = error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({
          path: [...issue.path, key],
          says: `there is no setting "${key}"; deploy/settings.md lists those there are`,
        }))
      : [{ path: issue.path, says: issue.message }],
  );
  return faults
    .map(({ path, says }) => {
      const name = path.map(String).join('.');
      const line = lineOf(path);
      const from = given.get(name);
      const where =
        from ?? (file !== null && line !== null ? `${basename(file.name)} line ${line}` : null);
      return { line: from === undefined ? (line ?? 0) : 0, text: told(where, name, says) };
    })
    .sort((a, b) => a.line - b.line)
    .map(({ text }) => text);
}

const told = (where: string | null, name: string, says: string): string =>
  `✖ ${where === null ? '' : `${where}: `}${name}: ${says}`;

/** What one reader takes for TOML another may not; then faults are told without their lines. */
function linesIn(text: string): LineOf {
  try {
    return linesOf(text);
  } catch {
    return () => null;
  }
}
