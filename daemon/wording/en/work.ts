import type { Phrases } from '../phrase.ts';
import type { WorkSentences } from '../subject/work.ts';
import { gateVerbs } from './gate-names.ts';

export const work: Phrases<WorkSentences> = {
  'step/edges': () => 'Edges, while the boards stand in the stack',
  'step/back': () => 'Back, brushed out thin',
  'step/face': () => 'Face, brushed out along the grain',
  'step/ends': () => 'End grain, well soaked',
  'step/ends-again': () => 'End grain a second time, once the first has sunk in',
  'step/rags': () => 'Rags laid out flat outdoors or under water in a lidded can',
  'mounting/fresh-cuts': () => 'Every fresh cut primed the same day',
  'mounting/notches': () => 'Notches and drilled holes primed the same day',
  'mounting/nail-heads': () => 'Nail heads primed the same day',
  'mounting/end-grain-twice': () =>
    'End grain coated twice, the second time once the first has sunk in',
  'look/soaks-in': () =>
    'Look for what still shines: brush it out or wipe it off. Oil that stands on dense wood stays sticky for weeks. Say whether it has sunk in.',
  'look/film': () =>
    'Look against the light for runs and fat edges and brush them out while they are soft.',
  'touch-offcut': () => 'First on the witness offcut that was coated with these boards.',
  'touch-low-in-shade': () => 'Then low down in the shade, where it dries last.',
  'touch-under-lap': () => 'Under a lap or an edge below.',
  'touch-bottom-shelf': () =>
    'Then on the bottom shelf, in the middle of the rack, where the air stands.',
  'touch-fat-edge': () => 'On a fat edge, where paint has gathered.',
  'touch-knot': () => 'On a knot: paint over resin dries last.',
  'touch-lying-side': () => 'On the side that will lie on the next board.',
  'outcome-where': () => 'You need not walk: say how the sanding went.',
  'outcome-feel': () => 'Did the paper dust, or did it roll the paint up and clog?',
  'outcome-dusted': () => 'It dusted: this paint needs no more than it had when it was sanded.',
  'outcome-clogged': () => 'It clogged: this paint needs more than it had when it was sanded.',
  'if-passed/as-planned': ({ gate }) => `If it passes, ${gateVerbs[gate]} can go on as planned.`,
  'if-passed/now': ({ gate }) =>
    `If it passes, ${gateVerbs[gate]} can begin now instead of waiting.`,
  'if-failed': ({ gate }) => `If it fails, ${gateVerbs[gate]} waits, and nothing is spoilt.`,
};
