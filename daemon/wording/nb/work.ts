import type { Phrases } from '../phrase.ts';
import type { WorkSentences } from '../subject/work.ts';
import { gateVerbs } from './gate-names.ts';

export const work: Phrases<WorkSentences> = {
  'step/edges': () => 'Kantene, mens bordene står i stabelen',
  'step/back': () => 'Baksiden, strøket tynt ut',
  'step/face': () => 'Forsiden, strøket ut i fiberretningen',
  'step/ends': () => 'Endeveden, godt mettet',
  'step/ends-again': () => 'Endeveden en gang til, når det første har trukket inn',
  'step/rags': () => 'Fillene lagt flatt ut utendørs eller under vann i en metallboks med lokk',
  'mounting/fresh-cuts': () => 'Hvert ferskt kutt grunnet samme dag',
  'mounting/notches': () => 'Utsparinger og borede hull grunnet samme dag',
  'mounting/nail-heads': () => 'Spikerhoder grunnet samme dag',
  'mounting/end-grain-twice': () =>
    'Endeveden malt to ganger, andre gang når det første har trukket inn',
  'look/soaks-in': () =>
    'Se etter det som ennå skinner: stryk det ut eller tørk det av. Olje som blir stående på tett tre, er klebrig i ukevis. Si om den har trukket inn.',
  'look/film': () => 'Se mot lyset etter sig og feite kanter, og stryk dem ut mens de er myke.',
  'touch-offcut': () => 'Først på prøvebiten som ble malt sammen med disse bordene.',
  'touch-low-in-shade': () => 'Så langt nede i skyggen, der det tørker sist.',
  'touch-under-lap': () => 'Under et omlegg eller en underkant.',
  'touch-bottom-shelf': () => 'Så på nederste hylle, midt i reolen, der luften står.',
  'touch-fat-edge': () => 'På en feit kant, der malingen har samlet seg.',
  'touch-knot': () => 'På en kvist: maling over kvae tørker sist.',
  'touch-lying-side': () => 'På siden som skal ligge mot neste bord.',
  'outcome-where': () => 'Du trenger ikke gå dit: si hvordan slipingen gikk.',
  'outcome-feel': () => 'Støvet papiret, eller rullet det opp malingen og gikk tett?',
  'outcome-dusted': () =>
    'Det støvet: denne malingen trenger ikke mer enn den hadde da den ble slipt.',
  'outcome-clogged': () =>
    'Det gikk tett: denne malingen trenger mer enn den hadde da den ble slipt.',
  'if-passed/as-planned': ({ gate }) =>
    `Blir den bestått, går det an å ${gateVerbs[gate]} som planlagt.`,
  'if-passed/now': ({ gate }) =>
    `Blir den bestått, går det an å ${gateVerbs[gate]} nå i stedet for å vente.`,
  'if-failed': ({ gate }) =>
    `Blir den ikke bestått, venter du med å ${gateVerbs[gate]}, og ingenting er ødelagt.`,
};
