import type { Phrases } from '../phrase.ts';
import type { SettingSentences } from '../subject/setting.ts';

export const setting: Phrases<SettingSentences> = {
  'setting-unknown': ({ name }) => `Det finns ingen inställning ${name}.`,
  'setting-by-hand': ({ name }) =>
    `Inställningen ${name} ändras i inställningsfilen på själva datorn, inte på sidan.`,
  'setting-given': ({ name, other }) =>
    `Inställningen ${name} angavs vid starten med ${other}, och det går före det som väljs på sidan.`,
  'chosen-damaged': ({ found }) =>
    `Det som valdes på inställningssidan går inte att läsa: ${found}. I stället gäller inställningsfilen och det som är från början. Välj på nytt på sidan; den skadade filen sparas då bredvid den nya.`,
  'settings-unwritten': ({ found }) =>
    `Ändringen kunde inte skrivas i datamappen: ${found}. Ingenting ändrades.`,
  'settings-nothing-asked': () => 'Begäran nämner ingen inställning.',
};
