import type { Phrases } from '../phrase.ts';
import type { CalibrationSentences } from '../subject/calibration.ts';
import { quantityNames } from './detail.ts';

export const calibration: Phrases<CalibrationSentences> = {
  'points-too-close': ({ apart, quantity }, speak) =>
    `Två punkter närmare än ${speak.quantityDifference(apart, quantity)} ger ingen lutning: ta värden längre ifrån varandra, eller ett tillägg.`,
  'gain-too-far': ({ gain }, speak) =>
    `Punkterna gör en enhet från givaren till ${speak.number(gain, 2)} enheter: kontrollera vilket tal som visades och vilket som var rätt.`,
  'correction-too-far': ({ add }, speak) =>
    `En rättelse med ${speak.number(add)} är mer än någon fungerande givare behöver.`,
  'calibration-kind/battery': () => 'Ett batteris laddning kalibreras inte.',
  'calibration-kind/salts': () => 'Mättade salter är fixpunkter bara för fuktighet.',
  'calibration-kind/ice-point': () => 'Isvatten är en fixpunkt bara för temperatur.',
  'calibration-kind/test-resistor': () =>
    'Ett provmotstånd är till för resistansen hos en givare i virket.',
  'calibration-kind/resistance': () =>
    'En resistans rättas med ett provmotstånd eller två punkter; dess fuktkvot med en handmätare.',
  'compared/no-readings': ({ quantity, sensors }) =>
    `Inga värden för ${quantityNames[quantity]} kom från ${sensors.join(', ')} under den tiden.`,
  'compared/too-short': ({ hours, leastHours }, speak) =>
    `Alla hördes tillsammans i ${speak.hours(hours, 1)}; det behövs minst ${speak.hours(leastHours)}, helst en natt.`,
  'compared/not-steady': ({ quantity, steadyHours, hours }, speak) =>
    `I lådan ändrades ${quantityNames[quantity]} för fort (stadigt i ${speak.hours(steadyHours, 1)} av ${speak.bare.hours(hours, 1)}): stäng den, håll sol och värmare borta och låt den stå en natt.`,
  'compared/only-two': ({ difference, quantity }, speak) =>
    `De skiljer ${speak.quantityDifference(difference, quantity, 2)}. Vilken av två som har fel kan ingen säga: lägg en tredje bredvid, eller skriv in vad en handmätare visar.`,
  'compared/no-majority': ({ difference, quantity }, speak) =>
    `De sprider ${speak.quantityDifference(difference, quantity, 1)} och ingen majoritet håller ihop: använd en handmätare eller fixpunkter.`,
  'compared/together': ({ sensors, difference, quantity }, speak) =>
    `Alla ${sensors} håller ihop inom ${speak.quantityDifference(difference, quantity, 2)}.`,
  'compared/odd': ({ odd }, _speak, say) => odd.map(say).join(' '),
  'odd-one/wanders': ({ sensor }) =>
    `${sensor} avviker: den vandrar mot de andra, och det botar inget tillägg.`,
  'odd-one/above': ({ sensor, difference, quantity }, speak) =>
    `${sensor} avviker: ${speak.quantityDifference(difference, quantity, 1)} över de andra.`,
  'odd-one/below': ({ sensor, difference, quantity }, speak) =>
    `${sensor} avviker: ${speak.quantityDifference(difference, quantity, 1)} under de andra.`,
};
