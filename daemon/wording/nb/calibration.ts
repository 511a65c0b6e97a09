import type { Phrases } from '../phrase.ts';
import type { CalibrationSentences } from '../subject/calibration.ts';
import { quantityNames } from './detail.ts';

export const calibration: Phrases<CalibrationSentences> = {
  'points-too-close': ({ apart, quantity }, speak) =>
    `To punkter nærmere enn ${speak.quantityDifference(apart, quantity)} gir ingen stigning: ta verdier lenger fra hverandre, eller et tillegg.`,
  'gain-too-far': ({ gain }, speak) =>
    `Disse punktene gjør én enhet fra sensoren til ${speak.number(gain, 2)} enheter: sjekk hvilket tall som ble vist, og hvilket som var riktig.`,
  'correction-too-far': ({ add }, speak) =>
    `En korreksjon på ${speak.number(add)} er mer enn noen sensor som virker, trenger.`,
  'calibration-kind/battery': () => 'Ladningen i et batteri kalibreres ikke.',
  'calibration-kind/salts': () => 'Mettede salter er fastpunkter for fuktighet alene.',
  'calibration-kind/ice-point': () => 'Ispunktet er et fastpunkt for temperatur alene.',
  'calibration-kind/test-resistor': () =>
    'En prøvemotstand er for resistansen til en sensor i trevirket.',
  'calibration-kind/resistance': () =>
    'En resistans korrigeres med en prøvemotstand eller to punkter; trefuktigheten med en håndmåler.',
  'compared/no-readings': ({ quantity, sensors }) =>
    `Ingen målinger av ${quantityNames[quantity]} kom fra ${sensors.join(', ')} i den tiden.`,
  'compared/too-short': ({ hours, leastHours }, speak) =>
    `Alle ble hørt sammen i ${speak.hours(hours, 1)}; det trengs minst ${speak.hours(leastHours)}, helst en natt.`,
  'compared/not-steady': ({ quantity, steadyHours, hours }, speak) =>
    `I boksen endret ${quantityNames[quantity]} seg for fort (stabilt i ${speak.hours(steadyHours, 1)} av ${speak.bare.hours(hours, 1)}): lukk den, hold sol og varmeovn unna, og la den stå en natt.`,
  'compared/only-two': ({ difference, quantity }, speak) =>
    `Det skiller ${speak.quantityDifference(difference, quantity, 2)} mellom dem. Hvilken av to som tar feil, kan ingen si: legg en tredje ved siden av, eller skriv inn hva en håndmåler viser.`,
  'compared/no-majority': ({ difference, quantity }, speak) =>
    `De spriker med ${speak.quantityDifference(difference, quantity, 1)}, og intet flertall holder sammen: bruk en håndmåler eller fastpunkter.`,
  'compared/together': ({ sensors, difference, quantity }, speak) =>
    `Alle ${sensors} holder sammen innen ${speak.quantityDifference(difference, quantity, 2)}.`,
  'compared/odd': ({ odd }, _speak, say) => odd.map(say).join(' '),
  'odd-one/wanders': ({ sensor }) =>
    `${sensor} skiller seg ut: den vandrer i forhold til de andre, og det retter ikke noe tillegg opp.`,
  'odd-one/above': ({ sensor, difference, quantity }, speak) =>
    `${sensor} skiller seg ut: ${speak.quantityDifference(difference, quantity, 1)} over de andre.`,
  'odd-one/below': ({ sensor, difference, quantity }, speak) =>
    `${sensor} skiller seg ut: ${speak.quantityDifference(difference, quantity, 1)} under de andre.`,
};
