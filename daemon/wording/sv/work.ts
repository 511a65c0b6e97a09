import type { Phrases } from '../phrase.ts';
import type { WorkSentences } from '../subject/work.ts';
import { gateVerbs } from './gate-names.ts';

export const work: Phrases<WorkSentences> = {
  'step/edges': () => 'Kanterna, medan brädorna står i stapeln',
  'step/back': () => 'Baksidan, tunt utstruken',
  'step/face': () => 'Framsidan, utstruken längs fibrerna',
  'step/ends': () => 'Ändträet, väl mättat',
  'step/ends-again': () => 'Ändträet en gång till, när det första har sugits in',
  'step/rags': () => 'Trasorna utlagda plant utomhus eller under vatten i en burk med lock',
  'mounting/fresh-cuts': () => 'Varje ny kapyta grundad samma dag',
  'mounting/notches': () => 'Urtag och borrade hål grundade samma dag',
  'mounting/nail-heads': () => 'Spikskallar grundade samma dag',
  'mounting/end-grain-twice': () =>
    'Ändträet struket två gånger, andra gången när den första har sugits in',
  'look/soaks-in': () =>
    'Leta efter det som ännu blänker: stryk ut det eller torka av det. Olja som står kvar på tätt trä är klibbig i veckor. Säg om den har sugits in.',
  'look/film': () =>
    'Titta mot ljuset efter rinningar och feta kanter och stryk ut dem medan de är mjuka.',
  'touch-offcut': () => 'Först på provbiten som ströks tillsammans med de här brädorna.',
  'touch-low-in-shade': () => 'Sedan långt ner i skuggan, där det torkar sist.',
  'touch-under-lap': () => 'Under ett överlapp eller en nederkant.',
  'touch-bottom-shelf': () => 'Sedan på understa hyllan, mitt i stället, där luften står.',
  'touch-fat-edge': () => 'På en fet kant, där färg har samlats.',
  'touch-knot': () => 'På en kvist: färg över kåda torkar sist.',
  'touch-lying-side': () => 'På sidan som ska ligga mot nästa bräda.',
  'outcome-where': () => 'Du behöver inte gå dit: säg hur slipningen gick.',
  'outcome-feel': () => 'Dammade papperet, eller rullade det upp färgen och satte igen?',
  'outcome-dusted': () =>
    'Det dammade: den här färgen behöver inte mer än den hade när den slipades.',
  'outcome-clogged': () =>
    'Det satte igen: den här färgen behöver mer än den hade när den slipades.',
  'if-passed/as-planned': ({ gate }) => `Godkänns det går det att ${gateVerbs[gate]} som planerat.`,
  'if-passed/now': ({ gate }) =>
    `Godkänns det går det att ${gateVerbs[gate]} nu i stället för att vänta.`,
  'if-failed': ({ gate }) =>
    `Annars får ni vänta med att ${gateVerbs[gate]}, och inget är förstört.`,
};
