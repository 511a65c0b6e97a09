import type { Phrases } from '../phrase.ts';
import type { CalibrationSentences } from '../subject/calibration.ts';
import { quantityNames } from './detail.ts';

export const calibration: Phrases<CalibrationSentences> = {
  'points-too-close': ({ apart, quantity }, speak) =>
    `Zwei Punkte, die näher als ${speak.quantityDifference(apart, quantity)} beieinander liegen, ergeben keine Steigung: weiter entfernte Werte nehmen oder einen Versatz.`,
  'gain-too-far': ({ gain }, speak) =>
    `Diese Punkte machen aus einer Einheit des Sensors ${speak.number(gain, 2)} Einheiten: prüfen, welcher Wert angezeigt wurde und welcher stimmte.`,
  'correction-too-far': ({ add }, speak) =>
    `Eine Berichtigung um ${speak.number(add)} ist mehr, als ein heiler Sensor braucht.`,
  'calibration-kind/battery': () => 'Die Ladung einer Batterie wird nicht kalibriert.',
  'calibration-kind/salts': () => 'Gesättigte Salze sind Festpunkte nur für die Feuchte.',
  'calibration-kind/ice-point': () => 'Der Eispunkt ist ein Festpunkt nur für die Temperatur.',
  'calibration-kind/test-resistor': () =>
    'Ein Prüfwiderstand ist für den Widerstand eines Holzfühlers.',
  'calibration-kind/resistance': () =>
    'Ein Widerstand wird mit einem Prüfwiderstand oder zwei Punkten berichtigt; seine Holzfeuchte mit einem Handmessgerät.',
  'compared/no-readings': ({ quantity, sensors }) =>
    `In dieser Zeit fehlt die Größe ${quantityNames[quantity]} von ${sensors.join(', ')}.`,
  'compared/too-short': ({ hours, leastHours }, speak) =>
    `Alle zusammen waren ${speak.hours(hours, 1)} zu hören; mindestens ${speak.hours(leastHours)} sind nötig, besser eine Nacht.`,
  'compared/not-steady': ({ quantity, steadyHours, hours }, speak) =>
    `In der Kiste änderte sich eine Größe zu schnell: ${quantityNames[quantity]} (ruhig während ${speak.hours(steadyHours, 1)} von ${speak.bare.hours(hours, 1)}). Schließen, Sonne und Heizung fernhalten und eine Nacht stehen lassen.`,
  'compared/only-two': ({ difference, quantity }, speak) =>
    `Sie liegen ${speak.quantityDifference(difference, quantity, 2)} auseinander. Welcher von zweien falsch ist, kann niemand sagen: einen dritten dazulegen oder eintippen, was ein Handmessgerät zeigt.`,
  'compared/no-majority': ({ difference, quantity }, speak) =>
    `Sie streuen um ${speak.quantityDifference(difference, quantity, 1)}, und keine Mehrheit hält zusammen: ein Handmessgerät oder Festpunkte nehmen.`,
  'compared/together': ({ sensors, difference, quantity }, speak) =>
    `Alle ${sensors} halten innerhalb von ${speak.quantityDifference(difference, quantity, 2)} zusammen.`,
  'compared/odd': ({ odd }, _speak, say) => odd.map(say).join(' '),
  'odd-one/wanders': ({ sensor }) =>
    `${sensor} fällt aus der Reihe: Er wandert gegen die anderen, was kein Versatz behebt.`,
  'odd-one/above': ({ sensor, difference, quantity }, speak) =>
    `${sensor} fällt aus der Reihe: ${speak.quantityDifference(difference, quantity, 1)} über den anderen.`,
  'odd-one/below': ({ sensor, difference, quantity }, speak) =>
    `${sensor} fällt aus der Reihe: ${speak.quantityDifference(difference, quantity, 1)} unter den anderen.`,
};
