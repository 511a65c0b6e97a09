import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FitSentences } from '../subject/fit.ts';
import { names } from './thing-names.ts';

const toMeasure = ({ boards, fromEndCm }: FitSentences['moisture-unknown'], speak: Speaker) =>
  `Mål ${boards} bord ${speak.lengthCm(fromEndCm, 'as-set')} fra enden og skriv inn tallene.`;

const stop =
  (whatComes: string) =>
  ({ at, tomorrow, leadHours }: FitSentences['stop-dew'], speak: Speaker): string => {
    const when = tomorrow ? `i morgen kl. ${speak.clock(at)}` : `kl. ${speak.clock(at)}`;
    const before = leadHours === 0 ? '' : ` (slutt ${speak.hours(leadHours)} før)`;
    return `Fra ${when} ${whatComes}${before}.`;
  };

const humidity =
  (word: string) =>
  ({ rhPercent, limitPercent }: FitSentences['humidity/too-damp'], speak: Speaker): string =>
    `${word}: ${speak.humidity(rhPercent)} fuktighet, høyst ${speak.humidity(limitPercent, 'as-set')}.`;

const dewMargin =
  (word: string) =>
  ({ marginK, limitK }: FitSentences['dew-margin/clear'], speak: Speaker): string =>
    `${word}: ${speak.temperatureDifference(marginK)} over det, minst ${speak.temperatureDifference(limitK, 'as-set')}. Bord som kommer inn fra kulden, er nærmere.`;

export const fit: Phrases<FitSentences> = {
  'fit-good': () => 'Det går an å male.',
  'fit-poor': () => 'Det går, men noe taler imot.',
  'fit-no': () => 'Ikke nå.',
  'fit-cannot-tell': () => 'Kan ikke sies: noe er ikke kjent.',
  'air-unknown/to-brush': () =>
    'Det finnes ingen fersk måling av luften her: se selv på temperatur og fukt.',
  'humidity-unknown': () => 'Ingenting måler fuktigheten her, så duggpunktet er ikke kjent.',
  'humidity/too-damp': humidity('For fuktig'),
  'humidity/dry-enough': humidity('Tørt nok'),
  'dew-margin/too-near': dewMargin('For nær duggpunktet'),
  'dew-margin/clear': dewMargin('Godt over duggpunktet'),
  'temperature/too-cold': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: for kaldt, minst ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/too-hot': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: for varmt, høyst ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/very-slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: det tørker svært langsomt.`,
  'temperature/slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: det tørker langsomt; stryk tynt ut.`,
  'temperature/warm': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: varmt; tynne strøk, små felt, eller vent til kvelden.`,
  'temperature/fine': ({ tempC, fromC, toC }, speak) =>
    `${speak.temperature(tempC)}: mellom ${speak.bare.temperature(fromC, 'as-set')} og ${speak.temperature(toC, 'as-set')}.`,
  sun: (told) =>
    `Solen kan stå på en vegg mot ${names.facings[told.facing]} nå: mal aldri i direkte sol, følg skyggen rundt huset.`,
  'night-unknown': () =>
    'Den første natten kan ikke anslås: målingene går ikke langt nok tilbake ennå.',
  'night-cold': ({ lowC, errorK, limitC }, speak) =>
    `Den første natten faller til omtrent ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}); under ${speak.temperature(limitC, 'as-set')} står strøket stille.`,
  'night-dew': ({ marginK, limitK }, speak) =>
    `Den første natten kommer bordene til omtrent ${speak.temperatureDifference(marginK)} over duggpunktet, minst ${speak.temperatureDifference(limitK, 'as-set')}: den våte malingen kan bli matt eller stripete.`,
  'night-damp': ({ rhPercent, limitPercent }, speak) =>
    `Den første natten kommer luften til omtrent ${speak.humidity(rhPercent)}, høyst ${speak.humidity(limitPercent, 'as-set')}.`,
  night: ({ lowC, errorK }, speak) =>
    `Den første natten holder seg innenfor grensene: lavest omtrent ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}).`,
  'moisture-unknown': (told, speak) => `Ingen har målt trevirket. ${toMeasure(told, speak)}`,
  'moisture/too-wet': ({ worstPercent, limitPercent }, speak) =>
    `Trevirket er for vått: det verste bordet har ${speak.moisture(worstPercent)}, høyst ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture/dry-enough': ({ measured, worstPercent, limitPercent }, speak) =>
    `Trevirket er tørt nok: det verste av ${measured} bord har ${speak.moisture(worstPercent)}, høyst ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture-old': ({ days, worstPercent, ...rest }, speak) =>
    `Trevirket ble sist målt for ${days} døgn siden (verst ${speak.moisture(worstPercent)}). ${toMeasure(rest, speak)}`,
  'moisture-few': ({ measured, worstPercent, limitPercent, ...rest }, speak) =>
    `Bare ${measured} målt (verst ${speak.moisture(worstPercent)}, høyst ${speak.moisture(limitPercent, 'as-set')}). ${toMeasure(rest, speak)}`,
  'shelf-unknown': ({ lyingM }, speak) =>
    `Ledig hylle er ikke kjent: ingen har skrevet inn hvor mye reolene tar; ${speak.lengthM(lyingM, 1)} ligger på dem.`,
  shelf: ({ freeM }, speak) => `${speak.lengthM(freeM, 1)} hylle er ledig.`,
  'shelf/needed': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} hylle er ledig, disse bordene tar ${speak.lengthM(neededM, 1)}.`,
  'shelf/short': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} hylle er ledig, disse bordene tar ${speak.lengthM(neededM, 1)}. Mal bare det som får plass til å legges ned.`,
  floor: () => 'Fei gulvet og fukt det dagen før, og la støvet legge seg: ikke noe av det i dag.',
  'rain-unknown': () => 'Ikke noe regnvarsel er sendt: se selv på himmelen og på et værvarsel.',
  'stop-dew': stop('kommer bordene for nær duggpunktet'),
  'stop-damp': stop('blir luften for fuktig'),
  'stop-cold': stop('blir det for kaldt'),
  'stop-rain': stop('er det meldt regn'),
  'stop-hot': stop('blir det for varmt'),
  'stop-unknown': () => 'Ingenting kan sies om timene framover: ingen sensor har målt luften her.',
  'stop-none': ({ hours }, speak) => `Ingenting innen ${speak.number(hours)} timer krever det.`,
};
