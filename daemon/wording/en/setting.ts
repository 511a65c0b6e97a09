import type { Phrases } from '../phrase.ts';
import type { SettingSentences } from '../subject/setting.ts';

export const setting: Phrases<SettingSentences> = {
  'setting-unknown': ({ name }) => `There is no setting ${name}.`,
  'setting-by-hand': ({ name }) =>
    `The setting ${name} is changed in the settings file on the computer itself, and not on the page.`,
  'setting-given': ({ name, other }) =>
    `The setting ${name} was given at the start by ${other}, which goes before what is chosen on the page.`,
  'chosen-damaged': ({ found }) =>
    `What was chosen on the settings page cannot be read: ${found}. The settings file and the defaults hold instead. Choose anew on the page; the damaged file is then kept beside the new one.`,
  'settings-unwritten': ({ found }) =>
    `The change could not be written into the data folder: ${found}. Nothing was changed.`,
  'settings-nothing-asked': () => 'The request names no setting.',
};
