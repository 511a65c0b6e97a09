import type { Phrases } from '../phrase.ts';
import type { TimberSentences } from '../subject/timber.ts';

export const timber: Phrases<TimberSentences> = {
  'maybe-lead': () =>
    'Alte Farbe als Bleifarbe behandeln, bis eine Prüfung etwas anderes sagt: zuerst prüfen. Kein trockenes Schleifen, kein Abbrennen, kein offenes Kratzen; Kinder fernhalten und die örtlichen Vorschriften für Arbeiten mit Blei befolgen.',
  weathered: () =>
    'Graues Holz hält Farbe schlecht: die grauen Fasern bis aufs gesunde Holz abnehmen, trocknen lassen, dann streichen. Eine Staubmaske tragen.',
  'weathered-by-now': ({ days, limitDays }, speak) =>
    `Es wurde vor ${days} Tagen geliefert und lag ungeschützt draußen: sehen, ob es grau geworden ist. Mehr als etwa ${speak.number(limitDays)} Tage gelten als verwittert.`,
  wrapped: () =>
    'Eingepacktes Holz schwitzt: öffnen, auf Stapelleisten legen und vor dem Streichen die Holzfeuchte messen.',
  'knots-not-looked': () =>
    'Vor der Grundierung nach Ästen und Harz sehen: Harz abkratzen und die Stellen mit Terpentinöl abwischen, wo das Merkblatt des Herstellers es erlaubt.',
  resin: () =>
    'Harz hindert die Farbe darüber am Trocknen und schlägt durch: abkratzen, die Stellen abwischen und beim Prüfen an einem Ast anfassen.',
  'on-stickers': () =>
    'Auf Stapelleisten bleibt die Farbe unter jeder Leiste nass und bekommt Abdrücke: die Bretter wenden, sobald sie gewendet werden dürfen.',
  'recoat-wash': ({ days }) =>
    `Es steht seit ${days} Tagen im Freien: zuerst waschen, trocknen lassen und anrauen. Für den nächsten Anstrich ist es nicht zu spät.`,
  'recoat-winter': () =>
    'Es hat den Winter über gestanden: auch nach Schimmel und Kreidung sehen. Vor dem nächsten Anstrich wird Schimmel abgewaschen und abgetötet, Kreidung abgewaschen, bis ein dunkles Tuch sauber bleibt.',
  'tin-old': ({ tinName, months }) =>
    `Die Dose „${tinName}“ war seit ${months} Monaten offen: Trockenstoffe lassen mit dem Alter nach, deshalb bekommt der Anstrich mehr Zeit. Zuerst an einem Probestück versuchen.`,
  'tin-drier-poor': ({ tinName }) =>
    `Die Farbe in „${tinName}“ ist arm an Trockenstoffen: Der Anstrich bekommt mehr Zeit. Zuerst an einem Probestück versuchen.`,
};
