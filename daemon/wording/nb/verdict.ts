import type { Phrases } from '../phrase.ts';
import type { VerdictSentences } from '../subject/verdict.ts';
import { gateTests, gateVerbs } from './gate-names.ts';

export const verdict: Phrases<VerdictSentences> = {
  'passed-test': ({ gate }) =>
    `En følertest for å ${gateVerbs[gate]} eller for noe som krever mer, er bestått.`,
  'no-readings': () =>
    'Ingen temperatur er målt her siden strøket ble lagt: gi en sensor plass her.',
  'cured-so-far': ({ gate, degreeHours, neededDegreeHours, percent }, speak) =>
    `${speak.bare.degreeHours(degreeHours)} av omtrent ${speak.degreeHours(neededDegreeHours)} som trengs for å ${gateVerbs[gate]} (${speak.percent(percent)}).`,
  'failed-test': ({ failedDegreeHours, degreeHours }, speak) =>
    `Det besto ikke en følertest ved ${speak.degreeHours(failedDegreeHours)}; nå har det ${speak.bare.degreeHours(degreeHours)}.`,
  'how-to-test': ({ gate }) => gateTests[gate],
  gaps: ({ gapHours, bridgedDegreeHours }, speak) =>
    `${speak.hours(gapHours, 0)} uten målinger teller ikke her; med hullene fylt ville summen vært ${speak.degreeHours(bridgedDegreeHours)}.`,
  heat: ({ hotDegreeHours }, speak) =>
    `${speak.degreeHours(hotDegreeHours)} kom i hete som gir skinn på et strøk; de telles ikke.`,
  'models-differ': ({ degreeHours, otherDegreeHours }, speak) =>
    `I kulde gir to måter å regne herding på ulike svar: ${speak.bare.degreeHours(degreeHours)} og ${speak.degreeHours(otherDegreeHours)}.`,
  'air-poor': () =>
    'Luften her er dårlig, og det kan forsinke strøket: det får mer tid. Se luften på dette stedet.',
  'too-cold-to-cure': () => 'Det er for kaldt her til at strøket herder i det hele tatt.',
  outlook: () => 'Tidene ser framover fra døgnene som er målt her; været kan endre dem.',
  'starting-assumption': () =>
    'Hva et strøk trenger, er fortsatt en startantakelse; følertester av denne malingen erstatter den.',
  learned: ({ coats }) =>
    `Hva et strøk trenger, er lært av følertester på ${coats} ${coats === 1 ? 'annet' : 'andre'} strøk med denne malingen.`,
  'plan-hours': ({ gate, leastHours, hours }, speak) =>
    `Planen venter minst ${speak.hours(leastHours, 'as-set')} med å ${gateVerbs[gate]}; ${speak.hours(hours, 0)} har gått.`,
  'plan-degree-hours': ({ gate, leastDegreeHours, degreeHours }, speak) =>
    `Planen krever minst ${speak.degreeHours(leastDegreeHours, 'as-set')} for å ${gateVerbs[gate]}; nå er det ${speak.bare.degreeHours(degreeHours)}.`,
  'slower-boards': ({ batchName }) =>
    `Dette gjelder bordene som kom fra «${batchName}»: de er langsommere.`,
  'air-unknown': () =>
    'Det finnes ingen fersk måling av luften her: se på temperatur og fukt før du maler.',
  'air-cold': ({ tempC, limitC }, speak) =>
    `For kaldt til å male: ${speak.temperature(tempC)}, minst ${speak.temperature(limitC, 'as-set')}.`,
  'air-hot': ({ tempC, limitC }, speak) =>
    `For varmt til å male: ${speak.temperature(tempC)}, høyst ${speak.temperature(limitC, 'as-set')}.`,
  'air-damp': ({ rhPercent, limitPercent }, speak) =>
    `For fuktig til å male: ${speak.humidity(rhPercent)} fuktighet, høyst ${speak.humidity(limitPercent, 'as-set')}.`,
  'air-near-dew': ({ marginK, limitK }, speak) =>
    `For nær duggpunktet til å male: ${speak.temperatureDifference(marginK)} over det, minst ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'was-wet': () =>
    'Det kom vann på dette strøket: se etter matte flekker og bleking før du går videre, og si hva du så.',
};
