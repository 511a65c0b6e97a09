import type { Phrases } from '../phrase.ts';
import type { VerdictSentences } from '../subject/verdict.ts';
import { gateTests, gateVerbs } from './gate-names.ts';

export const verdict: Phrases<VerdictSentences> = {
  'passed-test': ({ gate }) => `A touch test for ${gateVerbs[gate]} or a harder job was passed.`,
  'no-readings': () => 'No temperature has been read here since the coat went on: place a sensor.',
  'cured-so-far': ({ gate, degreeHours, neededDegreeHours, percent }, speak) =>
    `${speak.bare.degreeHours(degreeHours)} of about ${speak.degreeHours(neededDegreeHours)} that ${gateVerbs[gate]} needs (${speak.percent(percent)}).`,
  'failed-test': ({ failedDegreeHours, degreeHours }, speak) =>
    `It failed a touch test at ${speak.degreeHours(failedDegreeHours)}; it has ${speak.bare.degreeHours(degreeHours)} now.`,
  'how-to-test': ({ gate }) => gateTests[gate],
  gaps: ({ gapHours, bridgedDegreeHours }, speak) =>
    `${speak.hours(gapHours, 0)} without readings count for nothing here; bridged, the sum would be ${speak.degreeHours(bridgedDegreeHours)}.`,
  heat: ({ hotDegreeHours }, speak) =>
    `${speak.degreeHours(hotDegreeHours)} were gained in heat that skins a coat; they are not counted.`,
  'models-differ': ({ degreeHours, otherDegreeHours }, speak) =>
    `In the cold two ways to reckon cure differ: ${speak.bare.degreeHours(degreeHours)} and ${speak.degreeHours(otherDegreeHours)}.`,
  'air-poor': () =>
    'The air here is poor, which may slow the coat: it is given more time. See the air of this place.',
  'too-cold-to-cure': () => 'It is too cold here for the coat to gain anything.',
  outlook: () => 'The times look ahead from the days recorded here; weather may change them.',
  'starting-assumption': () =>
    'What a coat needs is still a starting assumption; touch tests of this paint replace it.',
  learned: ({ coats }) =>
    `What a coat needs was learned from touch tests of ${coats} other ${coats === 1 ? 'coat' : 'coats'} of this paint.`,
  'plan-hours': ({ gate, leastHours, hours }, speak) =>
    `The plan waits at least ${speak.hours(leastHours, 'as-set')} before ${gateVerbs[gate]}; ${speak.hours(hours, 0)} have gone by.`,
  'plan-degree-hours': ({ gate, leastDegreeHours, degreeHours }, speak) =>
    `The plan asks for at least ${speak.degreeHours(leastDegreeHours, 'as-set')} before ${gateVerbs[gate]}; it has ${speak.bare.degreeHours(degreeHours)}.`,
  'slower-boards': ({ batchName }) =>
    `This speaks for the boards that came from “${batchName}”: they are slower.`,
  'air-unknown': () =>
    'There is no fresh reading of the air here: look at temperature and damp before you brush.',
  'air-cold': ({ tempC, limitC }, speak) =>
    `Too cold to brush: ${speak.temperature(tempC)}, at least ${speak.temperature(limitC, 'as-set')}.`,
  'air-hot': ({ tempC, limitC }, speak) =>
    `Too hot to brush: ${speak.temperature(tempC)}, at most ${speak.temperature(limitC, 'as-set')}.`,
  'air-damp': ({ rhPercent, limitPercent }, speak) =>
    `Too damp to brush: ${speak.humidity(rhPercent)} humidity, at most ${speak.humidity(limitPercent, 'as-set')}.`,
  'air-near-dew': ({ marginK, limitK }, speak) =>
    `Too near the dew point to brush: ${speak.temperatureDifference(marginK)} above it, at least ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'was-wet': () =>
    'Water came on this coat: look for dull spots and bleaching before you go on, and say what you saw.',
};
