import type { Phrases } from '../phrase.ts';
import type { LockUpSentences } from '../subject/lock-up.ts';

export const lockUp: Phrases<LockUpSentences> = {
  'lock-up-title/rags': () => 'Filler, hansker, papir, silrester, oljete støv',
  'lock-up-title/vacuum-bag': () => 'Støvsuger',
  'lock-up-title/brushes': () => 'Pensler',
  'lock-up-title/left-over-paint': () => 'Lokk og malingsrester',
  'lock-up-title/waste': () => 'Avfall',
  'lock-up-title/heater': () => 'Varmeovn',
  'lock-up-title/doors': () => 'Dører, luft og strøm',
  'lock-up-title/night': () => 'I natt',
  'lock-up-title/children': () => 'Barn og dyr',
  'lock-up/rags': () =>
    'De blir varme av seg selv og kan sette fyr på boden flere timer senere. Bløtlegg dem og legg dem i en metallboks med lokk, fylt med vann; eller legg dem flatt ut i ett enkelt lag utendørs, på avstand fra bygninger, til de er stive, og deretter i den boksen. Aldri sammenkrøllet, i en pose, i en bil eller innendørs.',
  'lock-up/vacuum-bag': () =>
    'Tøm posen eller beholderen utendørs, i boksen med vann: slipestøv av oljemaling blir varmt som en fille. La det aldri bli igjen i maskinen.',
  'lock-up/brushes': () =>
    'Tørk dem ut og heng dem i rå linolje, over bunnfallet, under lokk. Tørk oljen ut igjen før neste bruk. Det de ble tørket med, går samme vei som fillene.',
  'lock-up/left-over-paint': () =>
    'Tørk kantene og trykk lokkene på; en rund bit plastfilm på malingen holder skinn unna. Skinn løftes av før bruk, røres aldri inn; det går samme vei som fillene.',
  'lock-up/waste': () =>
    'Flytende maling, olje og terpentin er farlig avfall: i et merket, lukket spann til mottaket for farlig avfall, aldri i avløpet eller på bakken.',
  'lock-up/heater': () =>
    'Ingenting med flamme eller glødetråd står på mens løsemiddel går ut av bordene. La ingen varmeovn stå på som ikke er laget for å gå uten tilsyn, og ha ingenting brennbart innen en og en halv meter fra den.',
  'lock-up/doors': () =>
    'Luft gjennom i de første timene; lukk om kvelden når det er fuktigere ute. Lysene av over våte bord, verktøy koblet fra, veien til døren fri.',
  'lock-up/night': () =>
    'Se på nattens laveste temperatur, og på de våte bordene den kan ramme: dekk til, varm opp, eller bær inn det som lar seg bære.',
  'lock-up/children': () =>
    'Maling, olje og terpentin låses inn, aldri i drikkeflasker, og ingen som ikke kan lese en etikett, kommer til våte bord.',
  'day-coated': ({ batchName }) => `Malt: ${batchName}.`,
  'day-begun': ({ batchName }) => `Påbegynt strøk: ${batchName}.`,
  'day-sanded': ({ batchName }) => `Slipt: ${batchName}.`,
  'night-cold/wet-boards': ({ lowC, errorK, limitC }, speak) =>
    `Faller til omtrent ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}): under ${speak.temperature(limitC, 'as-set')} står strøket stille.`,
  'night-dew/wet-boards': ({ marginK, limitK }, speak) =>
    `Kommer til omtrent ${speak.temperatureDifference(marginK)} over duggpunktet; det trengs minst ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'night-damp/wet-boards': ({ rhPercent, limitPercent }, speak) =>
    `Fuktigheten kommer til omtrent ${speak.humidity(rhPercent)}; høyst ${speak.humidity(limitPercent, 'as-set')} går an.`,
  'night-rain': ({ rainMm }, speak) => `Det er meldt ${speak.rain(rainMm, 1)} regn.`,
};
