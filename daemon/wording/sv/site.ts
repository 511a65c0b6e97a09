import type { Phrases } from '../phrase.ts';
import type { SiteSentences } from '../subject/site.ts';

const wasSet =
  (way: string) =>
  ({ minutes }: { minutes: number }): string =>
    `Datorns klocka ställdes ${way} ${minutes} min, och ingen tidtjänst bekräftar det. Tiden går vidare som förut, så att ingen summa blir skev; om den nya tiden är rätt, starta om Boardcure.`;

export const site: Phrases<SiteSentences> = {
  'disk-full': () =>
    'Disken är full: mätvärden kvitteras inte, så att givarna behåller dem. Frigör utrymme; antecknandet fortsätter av sig självt.',
  'disk-low': ({ freeMiB }) =>
    `Bara ${freeMiB} MiB är kvar på datamappens disk: skapa utrymme, annars får mätvärden vänta hos sina givare.`,
  'broker-away': () => 'MQTT-servern är utom räckhåll; mätvärdena väntar där.',
  'clock-not-set': () =>
    'Datorns klocka är inte ställd. Mätvärden utan egen tid sparas och får sin plats när den är det: ge datorn ett nät med tidtjänst, eller ställ klockan.',
  'clock-was-set/forward': wasSet('fram'),
  'clock-was-set/back': wasSet('tillbaka'),
  'sensor-clock/ahead': ({ sensor, minutes }) =>
    `Klockan i givare ${sensor} går ${minutes} min före: dess mätvärden dateras när de kommer fram. Ställ dess klocka.`,
  'sensor-clock/behind': ({ sensor, minutes }) =>
    `Klockan i givare ${sensor} går ${minutes} min efter, eller så är dess mätvärden så länge på väg: de behåller tiden de anger. Ställ dess klocka, eller låt den inte skicka någon tid.`,
  'folder-gone': ({ name }) =>
    `Datamappen ${name} går inte att nå: det som tas emot nu skrivs till en fil som ingen hittar igen. Se till att disken är monterad, lägg tillbaka mappen och starta om Boardcure.`,
  'database-damaged': ({ found }) =>
    `Databasen är skadad (${found}). Mätvärden tas fortfarande emot. Stoppa Boardcure och lägg en säkerhetskopia på dess plats: boardcure restore <fil> --replace.`,
  'backup-not-made': ({ because }) =>
    `Den senaste nattliga säkerhetskopian gjordes inte. ${because}`,
};
