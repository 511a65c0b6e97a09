import type { Phrases } from '../phrase.ts';
import type { LockUpSentences } from '../subject/lock-up.ts';

export const lockUp: Phrases<LockUpSentences> = {
  'lock-up-title/rags': () => 'Trasor, handskar, papper, silrester, oljigt damm',
  'lock-up-title/vacuum-bag': () => 'Dammsugare',
  'lock-up-title/brushes': () => 'Penslar',
  'lock-up-title/left-over-paint': () => 'Lock och överbliven färg',
  'lock-up-title/waste': () => 'Avfall',
  'lock-up-title/heater': () => 'Värmare',
  'lock-up-title/doors': () => 'Dörrar, luft och ström',
  'lock-up-title/night': () => 'I natt',
  'lock-up-title/children': () => 'Barn och djur',
  'lock-up/rags': () =>
    'De blir varma av sig själva och kan sätta eld på boden flera timmar senare. Blöt dem och lägg dem i en plåtburk med lock, fylld med vatten; eller lägg ut dem plant i ett enda lager utomhus, på avstånd från byggnader, tills de är styva, och sedan i burken. Aldrig hopknölade, i en påse, i en bil eller inomhus.',
  'lock-up/vacuum-bag': () =>
    'Töm påsen eller behållaren utomhus, i burken med vatten: slipdamm av oljefärg blir varmt som en trasa. Lämna det aldrig i maskinen.',
  'lock-up/brushes': () =>
    'Torka ur dem och häng dem i rå linolja, ovanför bottensatsen, under lock. Torka ur oljan igen före nästa användning. Det de torkades med går samma väg som trasorna.',
  'lock-up/left-over-paint': () =>
    'Torka kanterna och tryck på locken; en rund bit plastfilm på färgen hindrar skinn. Skinn lyfts av före användning, rörs aldrig ner; det går samma väg som trasorna.',
  'lock-up/waste': () =>
    'Flytande färg, olja och terpentin är farligt avfall: i ett märkt, slutet kärl till återvinningscentralen, aldrig i avloppet eller på marken.',
  'lock-up/heater': () =>
    'Inget med låga eller glödtråd får vara på medan lösningsmedel lämnar brädorna. Lämna ingen värmare på som inte är gjord för att gå utan tillsyn, och inget brännbart inom en och en halv meter från den.',
  'lock-up/doors': () =>
    'Luft de första timmarna; stäng på kvällen när det är fuktigare ute. Släck ljuset över våta brädor, dra ur verktyg, håll vägen till dörren fri.',
  'lock-up/night': () =>
    'Se på nattens lägsta, och på de våta brädor den kan nå: täck, värm eller bär in det som går.',
  'lock-up/children': () =>
    'Färg, olja och terpentin står inlåsta, aldrig i dricksflaskor, och ingen som inte kan läsa en etikett kommer åt våta brädor.',
  'day-coated': ({ batchName }) => `Struket: ${batchName}.`,
  'day-begun': ({ batchName }) => `Påbörjad strykning: ${batchName}.`,
  'day-sanded': ({ batchName }) => `Slipat: ${batchName}.`,
  'night-cold/wet-boards': ({ lowC, errorK, limitC }, speak) =>
    `Faller till omkring ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}): under ${speak.temperature(limitC, 'as-set')} står strykningen stilla.`,
  'night-dew/wet-boards': ({ marginK, limitK }, speak) =>
    `Kommer till omkring ${speak.temperatureDifference(marginK)} över daggpunkten; minst ${speak.temperatureDifference(limitK, 'as-set')} behövs.`,
  'night-damp/wet-boards': ({ rhPercent, limitPercent }, speak) =>
    `Fuktigheten kommer till omkring ${speak.humidity(rhPercent)}; högst ${speak.humidity(limitPercent, 'as-set')} går an.`,
  'night-rain': ({ rainMm }, speak) => `${speak.rain(rainMm, 1)} regn väntas.`,
};
