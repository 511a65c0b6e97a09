import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { AirSentences } from '../subject/air.ts';

const changes = (
  { perHour, low, high }: AirSentences['air-changes-enough'],
  speak: Speaker,
): string =>
  `The air is changed about ${speak.perHour(perHour)} times an hour (${speak.perHour(low)} to ${speak.perHour(high)}, rough).`;

const cannotTell = (because: string) => () => `Air changes cannot be told: ${because}.`;

const loneSensor = (
  { sensor, heightKnown, colderK }: AirSentences['floor-colder'],
  speak: Speaker,
): string => {
  const who = heightKnown
    ? `One sensor, ${sensor}, hangs here`
    : `One sensor, ${sensor}, speaks for this place`;
  return `${who}; the bottom shelf is taken to be ${speak.temperatureDifference(colderK, 'as-set')} colder`;
};

export const air: Phrases<AirSentences> = {
  'air-changes-few': (told, speak) =>
    `${changes(told, speak)} Open up, unless it is wetter outside. No fan on wet film.`,
  'air-changes-enough': changes,
  'air-moister-drying': ({ gramsPerM3 }, speak) =>
    `Moister between the boards than in the room by ${speak.waterInAir(gramsPerM3)}; timber that still dries does that too.`,
  'air-stagnant': ({ gramsPerM3 }, speak) =>
    `Still air between the boards: moister than the room by ${speak.waterInAir(gramsPerM3)}. Space them out or let air through.`,
  'air-damp-long': ({ hours, rhPercent }, speak) =>
    `Damp for most of the last ${speak.number(hours)} hours: ${speak.humidity(rhPercent)} on average. Change the air when it is drier outside, or dry it.`,
  'rack-colder': ({ differenceK }, speak) =>
    `Colder than another rack in this room by ${speak.temperatureDifference(differenceK)}: its boards cure later.`,
  'air-cannot-tell/not-measured': cannotTell('it takes temperature and humidity here and outdoors'),
  'air-cannot-tell/few': (told, speak) =>
    `${changes(told, speak)} That is little, but boards take up and give off moisture, which makes it look less than it is.`,
  'air-cannot-tell/between': (told, speak) =>
    `${changes(told, speak)} Neither clearly few nor clearly enough.`,
  'air-cannot-tell/too-few-samples': cannotTell('there are too few readings of the last day yet'),
  'air-cannot-tell/too-short': cannotTell('the readings do not reach back far enough yet'),
  'air-cannot-tell/flat': cannotTell('the moisture of the air hardly changed'),
  'air-cannot-tell/does-not-fit': cannotTell(
    'something else than fresh air moves the moisture here',
  ),
  'air-cannot-tell/too-uncertain': cannotTell('the readings allow too many answers'),
  'floor-near-dew': ({ marginK, limitK, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}, and that is ${speak.temperatureDifference(marginK)} above the dew point, at least ${speak.temperatureDifference(limitK, 'as-set')}. Hang one there to know.`,
  'floor-colder': (told, speak) => `${loneSensor(told, speak)}. Feel a board there.`,
  'floor-colder/nothing-gained': (told, speak) =>
    `${loneSensor(told, speak)}: there nothing is gained now. Feel a board there.`,
  'floor-colder/longer': ({ longerPercent, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}: there a coat takes about ${speak.percent(longerPercent)} longer. Feel a board there.`,
  'wall-sun': ({ untilHour }, speak) =>
    `If the sun shines it stands on this wall until about ${speak.hourOfDay(untilHour)}: follow the shade.`,
  'wall-shade': () => 'Follow the shade: now it should lie on this wall.',
  'wall-shade/facing-unknown': () =>
    'Follow the shade: never brush in direct sun. Say which way this wall faces to be told when.',
  'wall-evening': () => 'Stop early enough that the film is set before evening dew.',
  'wall-evening/late': () =>
    'It is late: what is wet when dew falls goes dull. Leave it for tomorrow.',
  'wall-rain': () => 'This wall is open to rain: look at the forecast first.',
  'rack-over-metres': ({ placeName, capacityM, lyingM }, speak) =>
    `${placeName} takes ${speak.lengthM(capacityM)} of boards; by what is recorded ${speak.lengthM(lyingM)} lie there now. Was something moved away that nobody recorded?`,
  'rack-over-boards': ({ placeName, capacity, lying }) =>
    `${placeName} takes ${capacity} boards; by what is recorded ${lying} lie there now. Was something moved away that nobody recorded?`,
};
