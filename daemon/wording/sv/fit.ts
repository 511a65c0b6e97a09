import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FitSentences } from '../subject/fit.ts';
import { names } from './thing-names.ts';

const toMeasure = ({ boards, fromEndCm }: FitSentences['moisture-unknown'], speak: Speaker) =>
  `Mät ${boards} brädor ${speak.lengthCm(fromEndCm, 'as-set')} från änden och skriv in värdena.`;

const stop =
  (whatComes: string) =>
  ({ at, tomorrow, leadHours }: FitSentences['stop-dew'], speak: Speaker): string => {
    const when = tomorrow ? `i morgon kl. ${speak.clock(at)}` : `kl. ${speak.clock(at)}`;
    const before = leadHours === 0 ? '' : ` (sluta ${speak.hours(leadHours)} före)`;
    return `Från ${when} ${whatComes}${before}.`;
  };

const humidity =
  (word: string) =>
  ({ rhPercent, limitPercent }: FitSentences['humidity/too-damp'], speak: Speaker): string =>
    `${word}: ${speak.humidity(rhPercent)} fuktighet, högst ${speak.humidity(limitPercent, 'as-set')}.`;

const dewMargin =
  (word: string) =>
  ({ marginK, limitK }: FitSentences['dew-margin/clear'], speak: Speaker): string =>
    `${word}: ${speak.temperatureDifference(marginK)} över den, minst ${speak.temperatureDifference(limitK, 'as-set')}. Brädor som kommer in från kylan är närmare.`;

export const fit: Phrases<FitSentences> = {
  'fit-good': () => 'Det går att stryka.',
  'fit-poor': () => 'Det går, men något talar emot.',
  'fit-no': () => 'Inte nu.',
  'fit-cannot-tell': () => 'Går inte att säga: något är inte känt.',
  'air-unknown/to-brush': () =>
    'Det finns inget färskt mätvärde av luften här: se själv efter temperatur och fukt.',
  'humidity-unknown': () => 'Inget mäter fuktigheten här, så daggpunkten är inte känd.',
  'humidity/too-damp': humidity('För fuktigt'),
  'humidity/dry-enough': humidity('Torrt nog'),
  'dew-margin/too-near': dewMargin('För nära daggpunkten'),
  'dew-margin/clear': dewMargin('Väl över daggpunkten'),
  'temperature/too-cold': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: för kallt, minst ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/too-hot': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: för hett, högst ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/very-slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: det torkar mycket långsamt.`,
  'temperature/slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: det torkar långsamt; stryk ut tunt.`,
  'temperature/warm': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: varmt; tunna strykningar, små stycken, eller vänta till kvällen.`,
  'temperature/fine': ({ tempC, fromC, toC }, speak) =>
    `${speak.temperature(tempC)}: mellan ${speak.bare.temperature(fromC, 'as-set')} och ${speak.temperature(toC, 'as-set')}.`,
  sun: (told) =>
    `Solen kan ligga på en vägg mot ${names.facings[told.facing]} nu: stryk aldrig i direkt sol, följ skuggan runt huset.`,
  'night-unknown': () =>
    'Första natten går inte att säga: mätvärdena räcker inte tillräckligt långt tillbaka än.',
  'night-cold': ({ lowC, errorK, limitC }, speak) =>
    `Första natten faller till omkring ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}); under ${speak.temperature(limitC, 'as-set')} står strykningen stilla.`,
  'night-dew': ({ marginK, limitK }, speak) =>
    `Under första natten kommer brädorna till omkring ${speak.temperatureDifference(marginK)} över daggpunkten, minst ${speak.temperatureDifference(limitK, 'as-set')}: den våta färgen kan bli matt eller strimmig.`,
  'night-damp': ({ rhPercent, limitPercent }, speak) =>
    `Under första natten kommer luften till omkring ${speak.humidity(rhPercent)}, högst ${speak.humidity(limitPercent, 'as-set')}.`,
  night: ({ lowC, errorK }, speak) =>
    `Första natten håller sig inom gränserna: lägst omkring ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}).`,
  'moisture-unknown': (told, speak) => `Ingen har mätt virket. ${toMeasure(told, speak)}`,
  'moisture/too-wet': ({ worstPercent, limitPercent }, speak) =>
    `Virket är för vått: den sämsta brädan har ${speak.moisture(worstPercent)}, högst ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture/dry-enough': ({ measured, worstPercent, limitPercent }, speak) =>
    `Virket är torrt nog: den sämsta av ${measured} brädor har ${speak.moisture(worstPercent)}, högst ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture-old': ({ days, worstPercent, ...rest }, speak) =>
    `Virket mättes senast för ${days} dygn sedan (sämst ${speak.moisture(worstPercent)}). ${toMeasure(rest, speak)}`,
  'moisture-few': ({ measured, worstPercent, limitPercent, ...rest }, speak) =>
    `Bara ${measured} mätta (sämst ${speak.moisture(worstPercent)}, högst ${speak.moisture(limitPercent, 'as-set')}). ${toMeasure(rest, speak)}`,
  'shelf-unknown': ({ lyingM }, speak) =>
    `Ledig hylla är inte känd: ingen har skrivit in hur mycket ställen rymmer; ${speak.lengthM(lyingM, 1)} ligger på dem.`,
  shelf: ({ freeM }, speak) => `${speak.lengthM(freeM, 1)} hylla är ledig.`,
  'shelf/needed': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} hylla är ledig, de här brädorna tar ${speak.lengthM(neededM, 1)}.`,
  'shelf/short': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} hylla är ledig, de här brädorna tar ${speak.lengthM(neededM, 1)}. Stryk bara det som får plats att läggas ner.`,
  floor: () =>
    'Sopa golvet och fukta det dagen före, och låt dammet lägga sig: inget av det i dag.',
  'rain-unknown': () => 'Ingen regnprognos har skickats: titta själv på himlen och på en prognos.',
  'stop-dew': stop('kommer brädorna för nära daggpunkten'),
  'stop-damp': stop('blir luften för fuktig'),
  'stop-cold': stop('blir det för kallt'),
  'stop-rain': stop('väntas regn'),
  'stop-hot': stop('blir det för hett'),
  'stop-unknown': () => 'Inget går att säga om timmarna framåt: ingen givare har mätt luften här.',
  'stop-none': ({ hours }, speak) => `Inget inom ${speak.number(hours)} timmar kräver det.`,
};
