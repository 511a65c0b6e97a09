import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { AirSentences } from '../subject/air.ts';

const changes = (
  { perHour, low, high }: AirSentences['air-changes-enough'],
  speak: Speaker,
): string =>
  `Die Luft wechselt etwa ${speak.perHour(perHour)}-mal je Stunde (${speak.perHour(low)} bis ${speak.perHour(high)}, grob).`;

const cannotTell = (because: string) => () =>
  `Der Luftwechsel lässt sich nicht angeben: ${because}.`;

const loneSensor = (
  { sensor, heightKnown, colderK }: AirSentences['floor-colder'],
  speak: Speaker,
): string => {
  const who = heightKnown
    ? `Ein einziger Sensor, ${sensor}, hängt hier`
    : `Ein einziger Sensor, ${sensor}, spricht für diesen Platz`;
  return `${who}; die unterste Lage gilt als ${speak.temperatureDifference(colderK, 'as-set')} kälter`;
};

export const air: Phrases<AirSentences> = {
  'air-changes-few': (told, speak) =>
    `${changes(told, speak)} Öffnen, außer wenn es draußen feuchter ist. Kein Gebläse auf nasse Farbe.`,
  'air-changes-enough': changes,
  'air-moister-drying': ({ gramsPerM3 }, speak) =>
    `Zwischen den Brettern um ${speak.waterInAir(gramsPerM3)} feuchter als im Raum; das tut auch Holz, das noch trocknet.`,
  'air-stagnant': ({ gramsPerM3 }, speak) =>
    `Die Luft steht zwischen den Brettern: um ${speak.waterInAir(gramsPerM3)} feuchter als im Raum. Auseinanderrücken oder Luft durchlassen.`,
  'air-damp-long': ({ hours, rhPercent }, speak) =>
    `Die meiste Zeit der letzten ${speak.number(hours)} Stunden feucht: im Mittel ${speak.humidity(rhPercent)}. Lüften, wenn es draußen trockener ist, oder die Luft trocknen.`,
  'rack-colder': ({ differenceK }, speak) =>
    `Um ${speak.temperatureDifference(differenceK)} kälter als ein anderes Gestell in diesem Raum: Seine Bretter härten später.`,
  'air-cannot-tell/not-measured': cannotTell(
    'Dazu braucht es Temperatur und Feuchte hier und im Freien',
  ),
  'air-cannot-tell/few': (told, speak) =>
    `${changes(told, speak)} Das ist wenig, aber Bretter nehmen Feuchte auf und geben sie ab; dadurch sieht es nach weniger aus, als es ist.`,
  'air-cannot-tell/between': (told, speak) =>
    `${changes(told, speak)} Weder klar zu wenig noch klar genug.`,
  'air-cannot-tell/too-few-samples': cannotTell('Vom letzten Tag gibt es noch zu wenige Messwerte'),
  'air-cannot-tell/too-short': cannotTell('Die Messwerte reichen noch nicht weit genug zurück'),
  'air-cannot-tell/flat': cannotTell('Die Feuchte der Luft hat sich kaum geändert'),
  'air-cannot-tell/does-not-fit': cannotTell(
    'Etwas anderes als frische Luft bewegt hier die Feuchte',
  ),
  'air-cannot-tell/too-uncertain': cannotTell('Die Messwerte lassen zu viele Antworten zu'),
  'floor-near-dew': ({ marginK, limitK, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}, und das ist ${speak.temperatureDifference(marginK)} über dem Taupunkt, mindestens ${speak.temperatureDifference(limitK, 'as-set')}. Um es zu wissen, dort einen aufhängen.`,
  'floor-colder': (told, speak) => `${loneSensor(told, speak)}. Dort ein Brett anfassen.`,
  'floor-colder/nothing-gained': (told, speak) =>
    `${loneSensor(told, speak)}: Dort kommt jetzt nichts hinzu. Dort ein Brett anfassen.`,
  'floor-colder/longer': ({ longerPercent, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}: Dort braucht ein Anstrich etwa ${speak.percent(longerPercent)} länger. Dort ein Brett anfassen.`,
  'wall-sun': ({ untilHour }, speak) =>
    `Wenn die Sonne scheint, steht sie bis etwa ${speak.hourOfDay(untilHour)} auf dieser Wand: dem Schatten folgen.`,
  'wall-shade': () => 'Dem Schatten folgen: Jetzt sollte er auf dieser Wand liegen.',
  'wall-shade/facing-unknown': () =>
    'Dem Schatten folgen: nie in direkter Sonne streichen. Sagen, wohin diese Wand schaut; dann wird gesagt, wann.',
  'wall-evening': () => 'Früh genug aufhören, damit der Film vor dem Abendtau angezogen hat.',
  'wall-evening/late': () =>
    'Es ist spät: Was nass ist, wenn Tau fällt, wird matt. Für morgen lassen.',
  'wall-rain': () => 'Diese Wand ist dem Regen ausgesetzt: zuerst die Vorhersage ansehen.',
  'rack-over-metres': ({ placeName, capacityM, lyingM }, speak) =>
    `${placeName} fasst ${speak.lengthM(capacityM)} Bretter; nach den Einträgen liegen dort jetzt ${speak.lengthM(lyingM)}. Wurde etwas weggelegt, das niemand eingetragen hat?`,
  'rack-over-boards': ({ placeName, capacity, lying }) =>
    `${placeName} fasst ${capacity} Bretter; nach den Einträgen liegen dort jetzt ${lying}. Wurde etwas weggelegt, das niemand eingetragen hat?`,
};
