import type { z } from 'zod';
import { Settings } from './schema.ts';

/** A single setting of the schema. */
export interface SettingField {
  /** Its path with dots. */
  readonly name: string;
  readonly path: readonly string[];
  readonly schema: z.ZodType;
  /** Whether a change holds at once; else from the next start on. */
  readonly atOnce: boolean;
  /**
   * Whether it may be changed on the page: only where its schema says so. What names a file or an
   * address, keeps a secret, lets somebody in or throws something away stays in the settings file.
   */
  readonly onPage: boolean;
}

/** The fields of a section; null where a field is no section. */
export function shapeOf(field: unknown): z.ZodRawShape | null {
  const inner =
    typeof field === 'object' && field !== null && 'unwrap' in field
      ? (field as z.ZodOptional).unwrap()
      : field;
  return typeof inner === 'object' && inner !== null && 'shape' in inner
    ? (inner as z.ZodObject).shape
    : null;
}

/** Every single setting, by its name, in the order of the schema. */
export const settingFields: ReadonlyMap<string, SettingField> = new Map(
  leaves(Settings.shape, []).map((field) => [field.name, field]),
);

function leaves(shape: z.ZodRawShape, within: readonly string[]): SettingField[] {
  return Object.entries(shape).flatMap(([key, field]) => {
    const path = [...within, key];
    const inner = shapeOf(field);
    if (inner) return leaves(inner, path);
    const schema = field as z.ZodType;
    const { live, onPage } = schema.meta() ?? {};
    return [{ name: path.join('.'), path, schema, atOnce: live === true, onPage: onPage === true }];
  });
}
