import type { Phrases } from '../phrase.ts';
import type { CalibrationSentences } from '../subject/calibration.ts';
import { quantityNames } from './detail.ts';

export const calibration: Phrases<CalibrationSentences> = {
  'points-too-close': ({ apart, quantity }, speak) =>
    `Two points closer than ${speak.quantityDifference(apart, quantity)} give no slope: take values further apart, or an offset.`,
  'gain-too-far': ({ gain }, speak) =>
    `These points make one unit of the sensor ${speak.number(gain, 2)} units: check which figure was shown and which was so.`,
  'correction-too-far': ({ add }, speak) =>
    `A correction by ${speak.number(add)} is more than any working sensor needs.`,
  'calibration-kind/battery': () => 'A battery’s charge is not calibrated.',
  'calibration-kind/salts': () => 'Saturated salts are fixed points of humidity alone.',
  'calibration-kind/ice-point': () => 'The ice point is a fixed point of temperature alone.',
  'calibration-kind/test-resistor': () => 'A test resistor is for the resistance of a wood probe.',
  'calibration-kind/resistance': () =>
    'A resistance is corrected by a test resistor or two points; its moisture by a hand meter.',
  'compared/no-readings': ({ quantity, sensors }) =>
    `No ${quantityNames[quantity]} came from ${sensors.join(', ')} in that time.`,
  'compared/too-short': ({ hours, leastHours }, speak) =>
    `All of them were heard together for ${speak.hours(hours, 1)}; at least ${speak.hours(leastHours)} are needed, better a night.`,
  'compared/not-steady': ({ quantity, steadyHours, hours }, speak) =>
    `The ${quantityNames[quantity]} in the box changed too fast (steady for ${speak.hours(steadyHours, 1)} of ${speak.bare.hours(hours, 1)}): close it, keep sun and heater off, and leave it for a night.`,
  'compared/only-two': ({ difference, quantity }, speak) =>
    `They are ${speak.quantityDifference(difference, quantity, 2)} apart. Which of two is wrong nobody can tell: lay a third beside them, or type what a hand meter shows.`,
  'compared/no-majority': ({ difference, quantity }, speak) =>
    `They scatter by ${speak.quantityDifference(difference, quantity, 1)} and no majority keeps together: use a hand meter or fixed points.`,
  'compared/together': ({ sensors, difference, quantity }, speak) =>
    `All ${sensors} keep together within ${speak.quantityDifference(difference, quantity, 2)}.`,
  'compared/odd': ({ odd }, _speak, say) => odd.map(say).join(' '),
  'odd-one/wanders': ({ sensor }) =>
    `${sensor} is the odd one out: it wanders against the others, which no offset mends.`,
  'odd-one/above': ({ sensor, difference, quantity }, speak) =>
    `${sensor} is the odd one out: ${speak.quantityDifference(difference, quantity, 1)} above the others.`,
  'odd-one/below': ({ sensor, difference, quantity }, speak) =>
    `${sensor} is the odd one out: ${speak.quantityDifference(difference, quantity, 1)} below the others.`,
};
