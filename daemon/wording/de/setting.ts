import type { Phrases } from '../phrase.ts';
import type { SettingSentences } from '../subject/setting.ts';

export const setting: Phrases<SettingSentences> = {
  'setting-unknown': ({ name }) => `Eine Einstellung ${name} gibt es nicht.`,
  'setting-by-hand': ({ name }) =>
    `Die Einstellung ${name} wird in der Einstellungsdatei auf dem Rechner selbst geändert, nicht auf der Seite.`,
  'setting-given': ({ name, other }) =>
    `Die Einstellung ${name} wurde beim Start mit ${other} angegeben; das geht dem vor, was auf der Seite gewählt wird.`,
  'chosen-damaged': ({ found }) =>
    `Was auf der Einstellungsseite gewählt wurde, lässt sich nicht lesen: ${found}. Stattdessen gelten die Einstellungsdatei und die Vorgaben. Auf der Seite neu wählen; die beschädigte Datei bleibt dann neben der neuen liegen.`,
  'settings-unwritten': ({ found }) =>
    `Die Änderung ließ sich nicht in den Datenordner schreiben: ${found}. Nichts wurde geändert.`,
  'settings-nothing-asked': () => 'Die Anfrage nennt keine Einstellung.',
};
