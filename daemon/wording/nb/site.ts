import type { Phrases } from '../phrase.ts';
import type { SiteSentences } from '../subject/site.ts';

const wasSet =
  (way: string) =>
  ({ minutes }: { minutes: number }): string =>
    `Datamaskinens klokke ble stilt ${way} ${minutes} min, og ingen tidstjeneste bekrefter det. Tiden går videre som før, så ingen sum blir skjev; er den nye tiden riktig, start Boardcure på nytt.`;

export const site: Phrases<SiteSentences> = {
  'disk-full': () =>
    'Disken er full: målinger kvitteres ikke, så sensorene beholder dem. Frigjør plass; registreringen fortsetter av seg selv.',
  'disk-low': ({ freeMiB }) =>
    `Bare ${freeMiB} MiB er igjen på disken til datamappen: lag plass, ellers må målinger vente hos sensorene.`,
  'broker-away': () => 'MQTT-tjeneren er utenfor rekkevidde; målingene venter der.',
  'clock-not-set': () =>
    'Datamaskinens klokke er ikke stilt. Målinger uten egen tid beholdes og får sin plass når den er det: gi datamaskinen et nett med tidstjeneste, eller still klokken.',
  'clock-was-set/forward': wasSet('fram'),
  'clock-was-set/back': wasSet('tilbake'),
  'sensor-clock/ahead': ({ sensor, minutes }) =>
    `Klokken i sensor ${sensor} går ${minutes} min foran: målingene dateres når de kommer fram. Still klokken dens.`,
  'sensor-clock/behind': ({ sensor, minutes }) =>
    `Klokken i sensor ${sensor} går ${minutes} min etter, eller så er målingene så lenge underveis: de beholder tiden de oppgir. Still klokken dens, eller la den ikke sende noen tid.`,
  'folder-gone': ({ name }) =>
    `Datamappen ${name} kan ikke nås: det som tas imot nå, skrives til en fil som ingen finner igjen. Se til at disken er montert, legg mappen tilbake og start Boardcure på nytt.`,
  'database-damaged': ({ found }) =>
    `Databasen er skadet (${found}). Målinger tas fortsatt imot. Stopp Boardcure og sett en sikkerhetskopi i stedet: boardcure restore <fil> --replace.`,
  'backup-not-made': ({ because }) =>
    `Den siste nattlige sikkerhetskopien ble ikke laget. ${because}`,
};
