import type { Phrases } from '../phrase.ts';
import type { VerdictSentences } from '../subject/verdict.ts';
import { gateNouns, gateTests } from './gate-names.ts';

export const verdict: Phrases<VerdictSentences> = {
  'passed-test': ({ gate }) =>
    `Eine Fingerprobe fürs ${gateNouns[gate]} oder für eine strengere Arbeit ist bestanden.`,
  'no-readings': () =>
    'Seit dem Anstrich wurde hier keine Temperatur gemessen: einen Sensor hier zuordnen.',
  'cured-so-far': ({ gate, degreeHours, neededDegreeHours, percent }, speak) =>
    `${speak.bare.degreeHours(degreeHours)} von etwa ${speak.degreeHours(neededDegreeHours)}, die es zum ${gateNouns[gate]} braucht (${speak.percent(percent)}).`,
  'failed-test': ({ failedDegreeHours, degreeHours }, speak) =>
    `Bei ${speak.degreeHours(failedDegreeHours)} hat er eine Fingerprobe nicht bestanden; jetzt hat er ${speak.bare.degreeHours(degreeHours)}.`,
  'how-to-test': ({ gate }) => gateTests[gate],
  gaps: ({ gapHours, bridgedDegreeHours }, speak) =>
    `${speak.hours(gapHours, 0)} ohne Messwerte zählen hier nicht; überbrückt wäre die Summe ${speak.degreeHours(bridgedDegreeHours)}.`,
  heat: ({ hotDegreeHours }, speak) =>
    `${speak.degreeHours(hotDegreeHours)} kamen in einer Hitze zustande, in der ein Anstrich eine Haut bekommt; sie zählen nicht.`,
  'models-differ': ({ degreeHours, otherDegreeHours }, speak) =>
    `In der Kälte gehen zwei Arten, Härtung zu rechnen, auseinander: ${speak.bare.degreeHours(degreeHours)} und ${speak.degreeHours(otherDegreeHours)}.`,
  'air-poor': () =>
    'Die Luft hier ist schlecht, was den Anstrich verzögern kann: Er bekommt mehr Zeit. Siehe die Luft dieses Platzes.',
  'too-cold-to-cure': () => 'Hier ist es zu kalt, als dass der Anstrich etwas gewönne.',
  outlook: () =>
    'Die Zeiten blicken von den hier gemessenen Tagen voraus; das Wetter kann sie ändern.',
  'starting-assumption': () =>
    'Was ein Anstrich braucht, ist noch eine Anfangsannahme; Fingerproben an dieser Farbe ersetzen sie.',
  learned: ({ coats }) =>
    `Was ein Anstrich braucht, ist aus Fingerproben an ${coats} ${coats === 1 ? 'anderem Anstrich' : 'anderen Anstrichen'} dieser Farbe gelernt.`,
  'plan-hours': ({ gate, leastHours, hours }, speak) =>
    `Der Plan wartet vor dem ${gateNouns[gate]} mindestens ${speak.hours(leastHours, 'as-set')}; vergangen sind ${speak.hours(hours, 0)}.`,
  'plan-degree-hours': ({ gate, leastDegreeHours, degreeHours }, speak) =>
    `Der Plan verlangt vor dem ${gateNouns[gate]} mindestens ${speak.degreeHours(leastDegreeHours, 'as-set')}; es sind ${speak.bare.degreeHours(degreeHours)}.`,
  'slower-boards': ({ batchName }) =>
    `Das gilt für die Bretter, die von „${batchName}“ kamen: Sie sind langsamer.`,
  'air-unknown': () =>
    'Von der Luft hier gibt es keinen frischen Messwert: vor dem Streichen nach Temperatur und Feuchte sehen.',
  'air-cold': ({ tempC, limitC }, speak) =>
    `Zu kalt zum Streichen: ${speak.temperature(tempC)}, mindestens ${speak.temperature(limitC, 'as-set')}.`,
  'air-hot': ({ tempC, limitC }, speak) =>
    `Zu heiß zum Streichen: ${speak.temperature(tempC)}, höchstens ${speak.temperature(limitC, 'as-set')}.`,
  'air-damp': ({ rhPercent, limitPercent }, speak) =>
    `Zu feucht zum Streichen: ${speak.humidity(rhPercent)} Luftfeuchte, höchstens ${speak.humidity(limitPercent, 'as-set')}.`,
  'air-near-dew': ({ marginK, limitK }, speak) =>
    `Zum Streichen zu nah am Taupunkt: ${speak.temperatureDifference(marginK)} darüber, mindestens ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'was-wet': () =>
    'Auf diesen Anstrich kam Wasser: vor dem Weitermachen nach matten Flecken und Ausbleichung sehen und sagen, was zu sehen war.',
};
