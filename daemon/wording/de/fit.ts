import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FitSentences } from '../subject/fit.ts';
import { names } from './thing-names.ts';

const toMeasure = ({ boards, fromEndCm }: FitSentences['moisture-unknown'], speak: Speaker) =>
  `An ${boards} Brettern ${speak.lengthCm(fromEndCm, 'as-set')} vom Ende messen und die Werte eintippen.`;

const stop =
  (whatComes: string) =>
  ({ at, tomorrow, leadHours }: FitSentences['stop-dew'], speak: Speaker): string => {
    const when = tomorrow ? `morgen ${speak.clock(at)}` : speak.clock(at);
    const before = leadHours === 0 ? '' : ` (${speak.hours(leadHours)} vorher aufhören)`;
    return `Ab ${when} ${whatComes}${before}.`;
  };

const humidity =
  (word: string) =>
  ({ rhPercent, limitPercent }: FitSentences['humidity/too-damp'], speak: Speaker): string =>
    `${word}: ${speak.humidity(rhPercent)} Luftfeuchte, höchstens ${speak.humidity(limitPercent, 'as-set')}.`;

const dewMargin =
  (word: string) =>
  ({ marginK, limitK }: FitSentences['dew-margin/clear'], speak: Speaker): string =>
    `${word}: ${speak.temperatureDifference(marginK)} darüber, mindestens ${speak.temperatureDifference(limitK, 'as-set')}. Bretter, die aus der Kälte hereinkommen, sind näher dran.`;

export const fit: Phrases<FitSentences> = {
  'fit-good': () => 'Es lässt sich streichen.',
  'fit-poor': () => 'Es geht, aber etwas spricht dagegen.',
  'fit-no': () => 'Jetzt nicht.',
  'fit-cannot-tell': () => 'Lässt sich nicht sagen: Etwas ist nicht bekannt.',
  'air-unknown/to-brush': () =>
    'Von der Luft hier gibt es keinen frischen Messwert: selbst nach Temperatur und Feuchte sehen.',
  'humidity-unknown': () =>
    'Nichts misst hier die Luftfeuchte, deshalb ist der Taupunkt nicht bekannt.',
  'humidity/too-damp': humidity('Zu feucht'),
  'humidity/dry-enough': humidity('Trocken genug'),
  'dew-margin/too-near': dewMargin('Zu nah am Taupunkt'),
  'dew-margin/clear': dewMargin('Weit genug vom Taupunkt'),
  'temperature/too-cold': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: zu kalt, mindestens ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/too-hot': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: zu heiß, höchstens ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/very-slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: Es wird sehr langsam trocknen.`,
  'temperature/slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: Es wird langsam trocknen; dünn ausstreichen.`,
  'temperature/warm': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: warm; dünne Anstriche, kleine Stücke, oder auf den Abend warten.`,
  'temperature/fine': ({ tempC, fromC, toC }, speak) =>
    `${speak.temperature(tempC)}: zwischen ${speak.bare.temperature(fromC, 'as-set')} und ${speak.temperature(toC, 'as-set')}.`,
  sun: (told) =>
    `Auf einer Wand nach ${names.facings[told.facing]} kann jetzt die Sonne stehen: nie in direkter Sonne streichen, dem Schatten ums Haus folgen.`,
  'night-unknown': () =>
    'Die erste Nacht lässt sich nicht sagen: Die Messwerte reichen noch nicht weit genug zurück.',
  'night-cold': ({ lowC, errorK, limitC }, speak) =>
    `Die erste Nacht fällt auf etwa ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}); unter ${speak.temperature(limitC, 'as-set')} steht der Anstrich still.`,
  'night-dew': ({ marginK, limitK }, speak) =>
    `In der ersten Nacht kommen die Bretter bis auf etwa ${speak.temperatureDifference(marginK)} über den Taupunkt, mindestens ${speak.temperatureDifference(limitK, 'as-set')}: Der nasse Film kann matt oder streifig werden.`,
  'night-damp': ({ rhPercent, limitPercent }, speak) =>
    `In der ersten Nacht kommt die Luft auf etwa ${speak.humidity(rhPercent)}, höchstens ${speak.humidity(limitPercent, 'as-set')}.`,
  night: ({ lowC, errorK }, speak) =>
    `Die erste Nacht bleibt innerhalb der Grenzen: am tiefsten etwa ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}).`,
  'moisture-unknown': (told, speak) => `Niemand hat das Holz gemessen. ${toMeasure(told, speak)}`,
  'moisture/too-wet': ({ worstPercent, limitPercent }, speak) =>
    `Holz zu nass: Das schlechteste Brett hat ${speak.moisture(worstPercent)}, höchstens ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture/dry-enough': ({ measured, worstPercent, limitPercent }, speak) =>
    `Holz trocken genug: Das schlechteste von ${measured} Brettern hat ${speak.moisture(worstPercent)}, höchstens ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture-old': ({ days, worstPercent, ...rest }, speak) =>
    `Das Holz wurde zuletzt vor ${days} Tagen gemessen (schlechtestes ${speak.moisture(worstPercent)}). ${toMeasure(rest, speak)}`,
  'moisture-few': ({ measured, worstPercent, limitPercent, ...rest }, speak) =>
    `Nur ${measured} gemessen (schlechtestes ${speak.moisture(worstPercent)}, höchstens ${speak.moisture(limitPercent, 'as-set')}). ${toMeasure(rest, speak)}`,
  'shelf-unknown': ({ lyingM }, speak) =>
    `Wie viel Platz frei ist, ist nicht bekannt: Niemand hat eingetragen, wie viel die Gestelle fassen; es liegen ${speak.lengthM(lyingM, 1)} darauf.`,
  shelf: ({ freeM }, speak) => `${speak.lengthM(freeM, 1)} Ablage sind frei.`,
  'shelf/needed': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} Ablage sind frei, diese Bretter brauchen ${speak.lengthM(neededM, 1)}.`,
  'shelf/short': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} Ablage sind frei, diese Bretter brauchen ${speak.lengthM(neededM, 1)}. Nur streichen, was sich ablegen lässt.`,
  floor: () =>
    'Am Tag davor den Boden fegen und anfeuchten und den Staub sich setzen lassen: heute nichts davon.',
  'rain-unknown': () =>
    'Es wurde keine Regenvorhersage gesendet: selbst nach dem Himmel und einer Vorhersage sehen.',
  'stop-dew': stop('kommen die Bretter dem Taupunkt zu nah'),
  'stop-damp': stop('wird die Luft zu feucht'),
  'stop-cold': stop('wird es zu kalt'),
  'stop-rain': stop('ist Regen vorhergesagt'),
  'stop-hot': stop('wird es zu heiß'),
  'stop-unknown': () =>
    'Über die nächsten Stunden lässt sich nichts sagen: Kein Sensor hat die Luft hier gemessen.',
  'stop-none': ({ hours }, speak) =>
    `In den nächsten ${speak.number(hours)} Stunden verlangt nichts danach.`,
};
