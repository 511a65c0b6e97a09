import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FitSentences } from '../subject/fit.ts';
import { names } from './thing-names.ts';

const toMeasure = ({ boards, fromEndCm }: FitSentences['moisture-unknown'], speak: Speaker) =>
  `Measure ${boards} boards ${speak.lengthCm(fromEndCm, 'as-set')} from the end and type in the figures.`;

const stop =
  (whatComes: string) =>
  ({ at, tomorrow, leadHours }: FitSentences['stop-dew'], speak: Speaker): string => {
    const when = tomorrow ? `tomorrow ${speak.clock(at)}` : speak.clock(at);
    const before = leadHours === 0 ? '' : ` (stop ${speak.hours(leadHours)} before)`;
    return `From ${when} on ${whatComes}${before}.`;
  };

const humidity =
  (word: string) =>
  ({ rhPercent, limitPercent }: FitSentences['humidity/too-damp'], speak: Speaker): string =>
    `${word}: ${speak.humidity(rhPercent)} humidity, at most ${speak.humidity(limitPercent, 'as-set')}.`;

const dewMargin =
  (word: string) =>
  ({ marginK, limitK }: FitSentences['dew-margin/clear'], speak: Speaker): string =>
    `${word}: ${speak.temperatureDifference(marginK)} above it, at least ${speak.temperatureDifference(limitK, 'as-set')}. Boards that come in from the cold are nearer.`;

export const fit: Phrases<FitSentences> = {
  'fit-good': () => 'Fit to brush.',
  'fit-poor': () => 'It can be done, but something is against it.',
  'fit-no': () => 'Not now.',
  'fit-cannot-tell': () => 'Cannot be told: something is not known.',
  'air-unknown/to-brush': () =>
    'There is no fresh reading of the air here: look at temperature and damp yourself.',
  'humidity-unknown': () => 'Nothing reads the humidity here, so the dew point is not known.',
  'humidity/too-damp': humidity('Too damp'),
  'humidity/dry-enough': humidity('Dry enough'),
  'dew-margin/too-near': dewMargin('Too near the dew point'),
  'dew-margin/clear': dewMargin('Clear of the dew point'),
  'temperature/too-cold': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: too cold, at least ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/too-hot': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: too hot, at most ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/very-slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: it will dry very slowly.`,
  'temperature/slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: it will dry slowly; brush it out thin.`,
  'temperature/warm': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: warm; thin coats, small stretches, or wait for the evening.`,
  'temperature/fine': ({ tempC, fromC, toC }, speak) =>
    `${speak.temperature(tempC)}: between ${speak.bare.temperature(fromC, 'as-set')} and ${speak.temperature(toC, 'as-set')}.`,
  sun: (told) =>
    `The sun may stand on a ${names.facings[told.facing]} wall now: never brush in direct sun, follow the shade around the house.`,
  'night-unknown': () =>
    'The first night cannot be told: the readings do not reach back far enough yet.',
  'night-cold': ({ lowC, errorK, limitC }, speak) =>
    `The first night falls to about ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}); below ${speak.temperature(limitC, 'as-set')} the coat stands still.`,
  'night-dew': ({ marginK, limitK }, speak) =>
    `In the first night the boards come to about ${speak.temperatureDifference(marginK)} above the dew point, at least ${speak.temperatureDifference(limitK, 'as-set')}: the wet film may dull or streak.`,
  'night-damp': ({ rhPercent, limitPercent }, speak) =>
    `In the first night the air gets to about ${speak.humidity(rhPercent)}, at most ${speak.humidity(limitPercent, 'as-set')}.`,
  night: ({ lowC, errorK }, speak) =>
    `The first night stays within the limits: lowest about ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}).`,
  'moisture-unknown': (told, speak) => `Nobody has measured the timber. ${toMeasure(told, speak)}`,
  'moisture/too-wet': ({ worstPercent, limitPercent }, speak) =>
    `Timber too wet: the worst board has ${speak.moisture(worstPercent)}, at most ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture/dry-enough': ({ measured, worstPercent, limitPercent }, speak) =>
    `Timber dry enough: the worst of ${measured} boards has ${speak.moisture(worstPercent)}, at most ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture-old': ({ days, worstPercent, ...rest }, speak) =>
    `The timber was last measured ${days} days ago (worst ${speak.moisture(worstPercent)}). ${toMeasure(rest, speak)}`,
  'moisture-few': ({ measured, worstPercent, limitPercent, ...rest }, speak) =>
    `Only ${measured} measured (worst ${speak.moisture(worstPercent)}, at most ${speak.moisture(limitPercent, 'as-set')}). ${toMeasure(rest, speak)}`,
  'shelf-unknown': ({ lyingM }, speak) =>
    `Free shelf is not known: nobody has entered how much the racks hold; ${speak.lengthM(lyingM, 1)} lie on them.`,
  shelf: ({ freeM }, speak) => `${speak.lengthM(freeM, 1)} of shelf are free.`,
  'shelf/needed': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} of shelf are free, these boards take ${speak.lengthM(neededM, 1)}.`,
  'shelf/short': ({ freeM, neededM }, speak) =>
    `${speak.lengthM(freeM, 1)} of shelf are free, these boards take ${speak.lengthM(neededM, 1)}. Coat only what can be laid down.`,
  floor: () =>
    'Sweep the floor and damp it the day before, and let the dust settle: none of it today.',
  'rain-unknown': () => 'No forecast of rain was sent: look at the sky and at a forecast yourself.',
  'stop-dew': stop('the boards come too near the dew point'),
  'stop-damp': stop('the air becomes too damp'),
  'stop-cold': stop('it becomes too cold'),
  'stop-rain': stop('rain is forecast'),
  'stop-hot': stop('it becomes too hot'),
  'stop-unknown': () => 'Nothing can be said of the hours ahead: no sensor has read the air here.',
  'stop-none': ({ hours }, speak) => `Nothing within ${speak.number(hours)} hours asks for it.`,
};
