import type { Phrases } from '../phrase.ts';
import type { VerdictSentences } from '../subject/verdict.ts';
import { gateNames, gateTests, gateTo } from './gate-names.ts';

export const verdict: Phrases<VerdictSentences> = {
  'passed-test': ({ gate }) =>
    `Kosketuskoe onnistui; se koski tätä tai vaativampaa työtä: ${gateNames[gate]}.`,
  'no-readings': () =>
    'Täältä ei ole luettu lämpötilaa kerroksen maalaamisen jälkeen: sijoita anturi.',
  'cured-so-far': ({ gate, degreeHours, neededDegreeHours, percent }, speak) =>
    `Kertynyt ${speak.bare.degreeHours(degreeHours)}, ${gateTo[gate]} tarvitaan noin ${speak.degreeHours(neededDegreeHours)} (${speak.percent(percent)}).`,
  'failed-test': ({ failedDegreeHours, degreeHours }, speak) =>
    `Kosketuskoe epäonnistui, kun summa oli ${speak.degreeHours(failedDegreeHours)}; nyt se on ${speak.degreeHours(degreeHours)}.`,
  'how-to-test': ({ gate }) => gateTests[gate],
  gaps: ({ gapHours, bridgedDegreeHours }, speak) =>
    `${speak.hours(gapHours, 0)} ilman lukemia jää tässä laskematta; arvioituna mukaan summa olisi ${speak.degreeHours(bridgedDegreeHours)}.`,
  heat: ({ hotDegreeHours }, speak) =>
    `${speak.degreeHours(hotDegreeHours)} kertyi kuumuudessa, joka nahkoittaa pinnan; niitä ei lasketa.`,
  'models-differ': ({ degreeHours, otherDegreeHours }, speak) =>
    `Kylmässä kaksi tapaa laskea kovettumista eroavat: ${speak.bare.degreeHours(degreeHours)} ja ${speak.degreeHours(otherDegreeHours)}.`,
  'air-poor': () =>
    'Ilma täällä on huono, mikä voi hidastaa kerrosta: sille annetaan enemmän aikaa. Katso tämän paikan ilma.',
  'too-cold-to-cure': () => 'Täällä on liian kylmää, jotta kerrokselle kertyisi mitään.',
  outlook: () => 'Ajat on jatkettu täältä tallennetuista päivistä; sää voi muuttaa niitä.',
  'starting-assumption': () =>
    'Kerroksen vaatima määrä on vielä alkuoletus; tämän maalin kosketuskokeet korvaavat sen.',
  learned: ({ coats }) =>
    coats === 1
      ? 'Kerroksen vaatima määrä on opittu tämän maalin yhden muun kerroksen kosketuskokeista.'
      : `Kerroksen vaatima määrä on opittu tämän maalin ${coats} muun kerroksen kosketuskokeista.`,
  'plan-hours': ({ gate, leastHours, hours }, speak) =>
    `Suunnitelma vaatii vähintään ${speak.hours(leastHours, 'as-set')} ennen työtä: ${gateNames[gate]}. Kulunut on ${speak.hours(hours, 0)}.`,
  'plan-degree-hours': ({ gate, leastDegreeHours, degreeHours }, speak) =>
    `Suunnitelma vaatii vähintään ${speak.degreeHours(leastDegreeHours, 'as-set')} ennen työtä: ${gateNames[gate]}. Kertynyt on ${speak.degreeHours(degreeHours)}.`,
  'slower-boards': ({ batchName }) =>
    `Tämä koskee lautoja, jotka tulivat erästä ”${batchName}”: ne ovat hitaampia.`,
  'air-unknown': () =>
    'Ilmasta ei ole täältä tuoretta lukemaa: katso lämpötila ja kosteus ennen kuin maalaat.',
  'air-cold': ({ tempC, limitC }, speak) =>
    `Liian kylmää maalata: ${speak.temperature(tempC)}, vähintään ${speak.temperature(limitC, 'as-set')}.`,
  'air-hot': ({ tempC, limitC }, speak) =>
    `Liian kuumaa maalata: ${speak.temperature(tempC)}, enintään ${speak.temperature(limitC, 'as-set')}.`,
  'air-damp': ({ rhPercent, limitPercent }, speak) =>
    `Liian kosteaa maalata: kosteus ${speak.humidity(rhPercent)}, enintään ${speak.humidity(limitPercent, 'as-set')}.`,
  'air-near-dew': ({ marginK, limitK }, speak) =>
    `Liian lähellä kastepistettä maalattavaksi: ${speak.temperatureDifference(marginK)} sen yläpuolella, vähintään ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'was-wet': () =>
    'Tämä kerros kastui: etsi himmeitä kohtia ja haalistumista ennen kuin jatkat, ja kerro, mitä näit.',
};
