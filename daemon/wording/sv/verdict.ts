import type { Phrases } from '../phrase.ts';
import type { VerdictSentences } from '../subject/verdict.ts';
import { gateTests, gateVerbs } from './gate-names.ts';

export const verdict: Phrases<VerdictSentences> = {
  'passed-test': ({ gate }) =>
    `Ett känselprov inför att ${gateVerbs[gate]} eller något som kräver mer är godkänt.`,
  'no-readings': () =>
    'Ingen temperatur har mätts här sedan strykningen lades: ge en givare sin plats här.',
  'cured-so-far': ({ gate, degreeHours, neededDegreeHours, percent }, speak) =>
    `${speak.bare.degreeHours(degreeHours)} av omkring ${speak.degreeHours(neededDegreeHours)} som behövs för att ${gateVerbs[gate]} (${speak.percent(percent)}).`,
  'failed-test': ({ failedDegreeHours, degreeHours }, speak) =>
    `Den klarade inte ett känselprov vid ${speak.degreeHours(failedDegreeHours)}; nu har den ${speak.bare.degreeHours(degreeHours)}.`,
  'how-to-test': ({ gate }) => gateTests[gate],
  gaps: ({ gapHours, bridgedDegreeHours }, speak) =>
    `${speak.hours(gapHours, 0)} utan mätvärden räknas inte här; överbryggat vore summan ${speak.degreeHours(bridgedDegreeHours)}.`,
  heat: ({ hotDegreeHours }, speak) =>
    `${speak.degreeHours(hotDegreeHours)} kom till i hetta som ger skinn på en strykning; de räknas inte.`,
  'models-differ': ({ degreeHours, otherDegreeHours }, speak) =>
    `I kyla skiljer sig två sätt att räkna härdning: ${speak.bare.degreeHours(degreeHours)} och ${speak.degreeHours(otherDegreeHours)}.`,
  'air-poor': () =>
    'Luften här är dålig, vilket kan fördröja strykningen: den får mer tid. Se platsens luft.',
  'too-cold-to-cure': () => 'Det är för kallt här för att strykningen ska härda alls.',
  outlook: () => 'Tiderna blickar framåt från de uppmätta dygnen här; vädret kan ändra dem.',
  'starting-assumption': () =>
    'Vad en strykning behöver är ännu ett startantagande; känselprov på den här färgen ersätter det.',
  learned: ({ coats }) =>
    `Vad en strykning behöver är lärt från känselprov på ${coats} ${coats === 1 ? 'annan strykning' : 'andra strykningar'} med den här färgen.`,
  'plan-hours': ({ gate, leastHours, hours }, speak) =>
    `Planen väntar minst ${speak.hours(leastHours, 'as-set')} med att ${gateVerbs[gate]}; ${speak.hours(hours, 0)} har gått.`,
  'plan-degree-hours': ({ gate, leastDegreeHours, degreeHours }, speak) =>
    `Planen kräver minst ${speak.degreeHours(leastDegreeHours, 'as-set')} för att ${gateVerbs[gate]}; nu är det ${speak.bare.degreeHours(degreeHours)}.`,
  'slower-boards': ({ batchName }) =>
    `Det här gäller brädorna som kom från ”${batchName}”: de är långsammare.`,
  'air-unknown': () =>
    'Det finns inget färskt mätvärde av luften här: se efter temperatur och fukt innan du stryker.',
  'air-cold': ({ tempC, limitC }, speak) =>
    `För kallt att stryka: ${speak.temperature(tempC)}, minst ${speak.temperature(limitC, 'as-set')}.`,
  'air-hot': ({ tempC, limitC }, speak) =>
    `För hett att stryka: ${speak.temperature(tempC)}, högst ${speak.temperature(limitC, 'as-set')}.`,
  'air-damp': ({ rhPercent, limitPercent }, speak) =>
    `För fuktigt att stryka: ${speak.humidity(rhPercent)} fuktighet, högst ${speak.humidity(limitPercent, 'as-set')}.`,
  'air-near-dew': ({ marginK, limitK }, speak) =>
    `För nära daggpunkten att stryka: ${speak.temperatureDifference(marginK)} över den, minst ${speak.temperatureDifference(limitK, 'as-set')}.`,
  'was-wet': () =>
    'Vatten kom på den här strykningen: leta efter matta fläckar och blekning innan du går vidare, och säg vad du såg.',
};
