import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { AirSentences } from '../subject/air.ts';

const changes = (
  { perHour, low, high }: AirSentences['air-changes-enough'],
  speak: Speaker,
): string =>
  `Luften byts ungefär ${speak.perHour(perHour)} gånger i timmen (${speak.perHour(low)} till ${speak.perHour(high)}, grovt).`;

const cannotTell = (because: string) => () => `Luftväxlingen går inte att säga: ${because}.`;

const loneSensor = (
  { sensor, heightKnown, colderK }: AirSentences['floor-colder'],
  speak: Speaker,
): string => {
  const who = heightKnown
    ? `En givare, ${sensor}, hänger här`
    : `En givare, ${sensor}, talar för den här platsen`;
  return `${who}; understa hyllan antas vara ${speak.temperatureDifference(colderK, 'as-set')} kallare`;
};

export const air: Phrases<AirSentences> = {
  'air-changes-few': (told, speak) =>
    `${changes(told, speak)} Öppna, om det inte är fuktigare ute. Ingen fläkt på våt färg.`,
  'air-changes-enough': changes,
  'air-moister-drying': ({ gramsPerM3 }, speak) =>
    `Fuktigare mellan brädorna än i rummet med ${speak.waterInAir(gramsPerM3)}; virke som ännu torkar gör också så.`,
  'air-stagnant': ({ gramsPerM3 }, speak) =>
    `Stillastående luft mellan brädorna: fuktigare än rummet med ${speak.waterInAir(gramsPerM3)}. Lägg dem glesare eller släpp igenom luft.`,
  'air-damp-long': ({ hours, rhPercent }, speak) =>
    `Fuktigt under större delen av de senaste ${speak.number(hours)} timmarna: ${speak.humidity(rhPercent)} i medeltal. Byt luft när det är torrare ute, eller avfukta.`,
  'rack-colder': ({ differenceK }, speak) =>
    `Kallare än ett annat ställ i rummet med ${speak.temperatureDifference(differenceK)}: brädorna här härdar senare.`,
  'air-cannot-tell/not-measured': cannotTell(
    'det kräver temperatur och fuktighet både här och utomhus',
  ),
  'air-cannot-tell/few': (told, speak) =>
    `${changes(told, speak)} Det är lite, men brädor tar upp och avger fukt, så det ser mindre ut än det är.`,
  'air-cannot-tell/between': (told, speak) =>
    `${changes(told, speak)} Varken klart för lite eller klart tillräckligt.`,
  'air-cannot-tell/too-few-samples': cannotTell(
    'det finns för få mätvärden från det senaste dygnet än',
  ),
  'air-cannot-tell/too-short': cannotTell('mätvärdena räcker inte tillräckligt långt tillbaka än'),
  'air-cannot-tell/flat': cannotTell('luftens fukt ändrades knappt'),
  'air-cannot-tell/does-not-fit': cannotTell('något annat än friskluft påverkar fukten här'),
  'air-cannot-tell/too-uncertain': cannotTell('mätvärdena tillåter för många svar'),
  'floor-near-dew': ({ marginK, limitK, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}, och det är ${speak.temperatureDifference(marginK)} över daggpunkten, minst ${speak.temperatureDifference(limitK, 'as-set')}. Häng en givare där för att veta.`,
  'floor-colder': (told, speak) => `${loneSensor(told, speak)}. Känn på en bräda där.`,
  'floor-colder/nothing-gained': (told, speak) =>
    `${loneSensor(told, speak)}: där händer ingenting just nu. Känn på en bräda där.`,
  'floor-colder/longer': ({ longerPercent, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}: där tar en strykning ungefär ${speak.percent(longerPercent)} längre tid. Känn på en bräda där.`,
  'wall-sun': ({ untilHour }, speak) =>
    `Om solen skiner ligger den på den här väggen till omkring ${speak.hourOfDay(untilHour)}: följ skuggan.`,
  'wall-shade': () => 'Följ skuggan: nu bör den ligga på den här väggen.',
  'wall-shade/facing-unknown': () =>
    'Följ skuggan: stryk aldrig i direkt sol. Säg åt vilket håll väggen vetter, så sägs det när.',
  'wall-evening': () => 'Sluta så tidigt att färgen har satt sig före kvällsdaggen.',
  'wall-evening/late': () =>
    'Det är sent: det som är vått när daggen faller blir matt. Låt det vara till i morgon.',
  'wall-rain': () => 'Väggen är öppen för regn: titta på prognosen först.',
  'rack-over-metres': ({ placeName, capacityM, lyingM }, speak) =>
    `${placeName} rymmer ${speak.lengthM(capacityM)} bräda; enligt anteckningarna ligger ${speak.lengthM(lyingM)} där nu. Flyttades något bort utan att någon antecknade det?`,
  'rack-over-boards': ({ placeName, capacity, lying }) =>
    `${placeName} rymmer ${capacity} brädor; enligt anteckningarna ligger ${lying} där nu. Flyttades något bort utan att någon antecknade det?`,
};
