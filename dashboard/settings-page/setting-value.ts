import type { ListedSetting } from '../../daemon/contract/setting.ts';
import type { Measure } from '../format/units.ts';
import type { Reader } from '../reader.ts';
import type { DescribedSetting } from './descriptions.ts';

type By = Pick<Reader, 'words' | 'figures'>;
type Value = ListedSetting['value'];

/** Units of settings that the reader may have others for. */
const measureOf = {
  '°C': 'tempC',
  K: 'differenceK',
  mm: 'lengthMm',
} as const satisfies Record<string, Measure>;

/** What a figure of a setting measures, where it is typed in the reader’s units; else null. */
export function measureIn(unit: string | null): Measure | null {
  return unit !== null && Object.hasOwn(measureOf, unit)
    ? measureOf[unit as keyof typeof measureOf]
    : null;
}

/** A unit as the reader writes it: those that are words have one in each language. */
export function unitText(unit: string, { units }: By['words']['settings']): string {
  return Object.hasOwn(units, unit) ? units[unit as keyof typeof units] : unit;
}

function figureText(value: number, unit: string | null, { words, figures }: By): string {
  const measure = measureIn(unit);
  if (measure !== null) return figures.asSet(measure, value, 6);
  const figure = figures.number(value, 6);
  return unit === null ? figure : `${figure} ${unitText(unit, words.settings)}`;
}

/** A value as it is read, with its unit: “5 °C”, “yes”, “nothing”. Texts are as in the file. */
export function valueText(value: Value, { unit }: Pick<ListedSetting, 'unit'>, by: By): string {
  const said = by.words.settings;
  if (value === null || value === '') return said.nothing;
  if (typeof value === 'boolean') return value ? said.yes : said.no;
  if (typeof value === 'number') return figureText(value, unit, by);
  if (typeof value === 'string') return value;
  if (!Array.isArray(value)) return JSON.stringify(value);
  if (value.length === 0) return said.nothing;
  return value
    .map((one) => valueText(one, { unit: typeof one === 'number' ? unit : null }, by))
    .join(' · ');
}

/** What a setting takes: “a number from −20 to 15 °C”. */
export function takesText(setting: ListedSetting, by: By): string {
  const said = by.words.settings;
  const { takes, choices, least, most, unit } = setting;
  if (takes === 'choice') return said.oneOf(choices.join(', '));
  const kind = said.kinds[takes];
  const bound = (limit: number) => valueText(limit, { unit }, by);
  if (least !== null && most !== null) {
    // A unit that both share is said once.
    const from = measureIn(unit) === null ? by.figures.number(least, 6) : bound(least);
    return said.between(kind, from, bound(most));
  }
  if (least !== null) return said.atLeast(kind, bound(least));
  return most === null ? kind : said.atMost(kind, bound(most));
}

/** Whether all of the words typed stand in a setting as it is shown: in its name and what it does. */
export function fitsSearch(setting: DescribedSetting, typed: string): boolean {
  const text = `${setting.name} ${setting.says ?? setting.description}`.toLowerCase();
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
