import type { CoatingStep } from '../../contract/coating.ts';
import type { Gate } from '../../contract/gate.ts';
import type { MountingLine } from '../../contract/mounting.ts';
import type { Nothing } from '../phrase.ts';

type Steps = { [Step in CoatingStep as `step/${Step}`]: Nothing };
type Mounting = { [Line in MountingLine as `mounting/${Line}`]: Nothing };

/** What is done at the boards: steps of a coat, the day they go up, and the round of the morning. */
export interface WorkSentences extends Steps, Mounting {
  'look/soaks-in': Nothing;
  'look/film': Nothing;
  'touch-offcut': Nothing;
  'touch-low-in-shade': Nothing;
  'touch-under-lap': Nothing;
  'touch-bottom-shelf': Nothing;
  'touch-fat-edge': Nothing;
  'touch-knot': Nothing;
  'touch-lying-side': Nothing;
  'outcome-where': Nothing;
  'outcome-feel': Nothing;
  'outcome-dusted': Nothing;
  'outcome-clogged': Nothing;
  'if-passed/as-planned': { gate: Gate };
  'if-passed/now': { gate: Gate };
  'if-failed': { gate: Gate };
}
