import type { Phrases } from '../phrase.ts';
import type { CalibrationSentences } from '../subject/calibration.ts';
import { quantityNames } from './detail.ts';

export const calibration: Phrases<CalibrationSentences> = {
  'points-too-close': ({ apart, quantity }, speak) =>
    `Kaksi pistettä, joiden väli on alle ${speak.quantityDifference(apart, quantity)}, eivät anna kulmakerrointa: ota kauempana toisistaan olevat arvot, tai siirtymä.`,
  'gain-too-far': ({ gain }, speak) =>
    `Näillä pisteillä anturin yksi yksikkö olisi ${speak.number(gain, 2)} yksikköä: tarkista, kumpi luku näytettiin ja kumpi oli todellinen.`,
  'correction-too-far': ({ add }, speak) =>
    `Korjaus ${speak.number(add)} on enemmän kuin mikään toimiva anturi tarvitsee.`,
  'calibration-kind/battery': () => 'Pariston varausta ei kalibroida.',
  'calibration-kind/salts': () => 'Kyllästetyt suolat ovat kiintopisteitä vain kosteudelle.',
  'calibration-kind/ice-point': () => 'Jääpiste on kiintopiste vain lämpötilalle.',
  'calibration-kind/test-resistor': () => 'Testivastus on puuanturin vastusta varten.',
  'calibration-kind/resistance': () =>
    'Vastus korjataan testivastuksella tai kahdella pisteellä; sen puun kosteus käsimittarilla.',
  'compared/no-readings': ({ quantity, sensors }) =>
    `Siltä ajalta puuttuu ${quantityNames[quantity]}, anturit: ${sensors.join(', ')}.`,
  'compared/too-short': ({ hours, leastHours }, speak) =>
    `Kaikki kuultiin yhdessä ${speak.hours(hours, 1)}; vähintään ${speak.hours(leastHours)} tarvitaan, mieluummin yö.`,
  'compared/not-steady': ({ quantity, steadyHours, hours }, speak) =>
    `Laatikossa muuttui liian nopeasti ${quantityNames[quantity]} (tasaista ${speak.bare.hours(steadyHours, 1)} / ${speak.hours(hours, 1)}): sulje laatikko, pidä aurinko ja lämmitin poissa, ja jätä yöksi.`,
  'compared/only-two': ({ difference, quantity }, speak) =>
    `Niiden ero on ${speak.quantityDifference(difference, quantity, 2)}. Kumpi kahdesta on väärässä, sitä ei voi kukaan sanoa: pane kolmas viereen, tai kirjoita, mitä käsimittari näyttää.`,
  'compared/no-majority': ({ difference, quantity }, speak) =>
    `Niiden hajonta on ${speak.quantityDifference(difference, quantity, 1)}, eikä mikään enemmistö pysy yhdessä: käytä käsimittaria tai kiintopisteitä.`,
  'compared/together': ({ sensors, difference, quantity }, speak) =>
    `Kaikki ${sensors} pysyvät yhdessä, suurin ero ${speak.quantityDifference(difference, quantity, 2)}.`,
  'compared/odd': ({ odd }, _speak, say) => odd.map(say).join(' '),
  'odd-one/wanders': ({ sensor }) =>
    `Poikkeava on ${sensor}: se vaeltaa muihin nähden, eikä mikään siirtymä korjaa sitä.`,
  'odd-one/above': ({ sensor, difference, quantity }, speak) =>
    `Poikkeava on ${sensor}: ${speak.quantityDifference(difference, quantity, 1)} muiden yläpuolella.`,
  'odd-one/below': ({ sensor, difference, quantity }, speak) =>
    `Poikkeava on ${sensor}: ${speak.quantityDifference(difference, quantity, 1)} muiden alapuolella.`,
};
