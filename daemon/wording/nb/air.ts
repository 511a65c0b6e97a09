import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { AirSentences } from '../subject/air.ts';

const changes = (
  { perHour, low, high }: AirSentences['air-changes-enough'],
  speak: Speaker,
): string =>
  `Luften skiftes omtrent ${speak.perHour(perHour)} ganger i timen (${speak.perHour(low)} til ${speak.perHour(high)}, grovt).`;

const cannotTell = (because: string) => () => `Luftskiftet kan ikke anslås: ${because}.`;

const loneSensor = (
  { sensor, heightKnown, colderK }: AirSentences['floor-colder'],
  speak: Speaker,
): string => {
  const who = heightKnown
    ? `Én sensor, ${sensor}, henger her`
    : `Én sensor, ${sensor}, taler for dette stedet`;
  return `${who}; nederste hylle antas å være ${speak.temperatureDifference(colderK, 'as-set')} kaldere`;
};

export const air: Phrases<AirSentences> = {
  'air-changes-few': (told, speak) =>
    `${changes(told, speak)} Luft ut, med mindre det er fuktigere ute. Ingen vifte på våt maling.`,
  'air-changes-enough': changes,
  'air-moister-drying': ({ gramsPerM3 }, speak) =>
    `Fuktigere mellom bordene enn i rommet med ${speak.waterInAir(gramsPerM3)}; trevirke som ennå tørker, gjør også det.`,
  'air-stagnant': ({ gramsPerM3 }, speak) =>
    `Stillestående luft mellom bordene: fuktigere enn rommet med ${speak.waterInAir(gramsPerM3)}. Legg dem lenger fra hverandre eller slipp luft gjennom.`,
  'air-damp-long': ({ hours, rhPercent }, speak) =>
    `Fuktig det meste av de siste ${speak.number(hours)} timene: ${speak.humidity(rhPercent)} i snitt. Skift luft når det er tørrere ute, eller avfukt.`,
  'rack-colder': ({ differenceK }, speak) =>
    `Kaldere enn en annen reol i dette rommet med ${speak.temperatureDifference(differenceK)}: bordene her herder senere.`,
  'air-cannot-tell/not-measured': cannotTell(
    'det krever temperatur og fuktighet både her og utendørs',
  ),
  'air-cannot-tell/few': (told, speak) =>
    `${changes(told, speak)} Det er lite, men bord tar opp og gir fra seg fukt, så det ser mindre ut enn det er.`,
  'air-cannot-tell/between': (told, speak) =>
    `${changes(told, speak)} Verken klart for lite eller klart nok.`,
  'air-cannot-tell/too-few-samples': cannotTell('det er for få målinger fra det siste døgnet ennå'),
  'air-cannot-tell/too-short': cannotTell('målingene går ikke langt nok tilbake ennå'),
  'air-cannot-tell/flat': cannotTell('fukten i luften endret seg knapt'),
  'air-cannot-tell/does-not-fit': cannotTell('noe annet enn frisk luft påvirker fukten her'),
  'air-cannot-tell/too-uncertain': cannotTell('målingene gir rom for for mange svar'),
  'floor-near-dew': ({ marginK, limitK, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}, og det er ${speak.temperatureDifference(marginK)} over duggpunktet, minst ${speak.temperatureDifference(limitK, 'as-set')}. Heng en sensor der for å vite det.`,
  'floor-colder': (told, speak) => `${loneSensor(told, speak)}. Kjenn på et bord der.`,
  'floor-colder/nothing-gained': (told, speak) =>
    `${loneSensor(told, speak)}: der skjer det ingenting nå. Kjenn på et bord der.`,
  'floor-colder/longer': ({ longerPercent, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}: der tar et strøk omtrent ${speak.percent(longerPercent)} lengre tid. Kjenn på et bord der.`,
  'wall-sun': ({ untilHour }, speak) =>
    `Hvis solen skinner, står den på denne veggen til omtrent kl. ${speak.hourOfDay(untilHour)}: følg skyggen.`,
  'wall-shade': () => 'Følg skyggen: nå bør den ligge på denne veggen.',
  'wall-shade/facing-unknown': () =>
    'Følg skyggen: mal aldri i direkte sol. Si hvilken vei veggen vender, så får du vite når.',
  'wall-evening': () => 'Slutt så tidlig at malingen har satt seg før kveldsduggen.',
  'wall-evening/late': () =>
    'Det er sent: det som er vått når duggen faller, blir matt. La det være til i morgen.',
  'wall-rain': () => 'Veggen er åpen for regn: se på værvarselet først.',
  'rack-over-metres': ({ placeName, capacityM, lyingM }, speak) =>
    `${placeName} tar ${speak.lengthM(capacityM)} bord; etter det som er notert, ligger det ${speak.lengthM(lyingM)} der nå. Ble noe flyttet bort uten at noen noterte det?`,
  'rack-over-boards': ({ placeName, capacity, lying }) =>
    `${placeName} tar ${capacity} bord; etter det som er notert, ligger det ${lying} der nå. Ble noe flyttet bort uten at noen noterte det?`,
};
