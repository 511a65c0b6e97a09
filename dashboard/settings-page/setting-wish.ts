import type { ListedSetting, SettingWish } from '../../daemon/contract/setting.ts';
import { typedNumber } from '../format/typed-number.ts';
import { numberOf, textOf } from '../forms/typed.ts';

/** Names of the fields of the form. */
export const VALUE = 'value';
export const HAS = 'has';

/** The same number of lines whatever is in them: a figure for each month, for example. */
export const isOfFixedLength = ({ entries }: Pick<ListedSetting, 'entries'>): boolean =>
  entries !== null && entries.fewest !== null && entries.fewest === entries.atMost;

/** What the form of a setting asks for. What is no number goes as it was typed: the daemon names it. */
export function wishOf(setting: ListedSetting, form: FormData): SettingWish {
  const { name } = setting;
  if (form.get(HAS) === 'nothing') return { settings: {}, nothing: [name] };
  return { settings: { [name]: valueIn(setting, form) } };
}

type Value = SettingWish['settings'][string];

function valueIn(setting: ListedSetting, form: FormData): Value {
  switch (setting.takes) {
    case 'yes-or-no':
      return form.get(VALUE) === 'true';
    case 'number':
    case 'whole-number':
      return numberOf(form, VALUE);
    case 'list':
      return listIn(setting, form);
    default:
      return textOf(form, VALUE);
  }
}

function listIn(setting: ListedSetting, form: FormData): Value {
  const typed = form
    .getAll(VALUE)
    .map((one) => String(one).trim())
    .filter((one) => one !== '' || isOfFixedLength(setting));
  const takes = setting.entries?.takes;
  return takes === 'number' || takes === 'whole-number' ? typed.map(typedNumber) : typed;
}
