import type { Gate } from '../../contract/gate.ts';
import type { Nothing } from '../phrase.ts';

/** Why a job on a coat is possible or not. */
export interface VerdictSentences {
  'passed-test': { gate: Gate };
  'no-readings': Nothing;
  'cured-so-far': { gate: Gate; degreeHours: number; neededDegreeHours: number; percent: number };
  'failed-test': { failedDegreeHours: number; degreeHours: number };
  'how-to-test': { gate: Gate };
  gaps: { gapHours: number; bridgedDegreeHours: number };
  heat: { hotDegreeHours: number };
  'models-differ': { degreeHours: number; otherDegreeHours: number };
  'air-poor': Nothing;
  'too-cold-to-cure': Nothing;
  outlook: Nothing;
  'starting-assumption': Nothing;
  learned: { coats: number };
  'plan-hours': { gate: Gate; leastHours: number; hours: number };
  'plan-degree-hours': { gate: Gate; leastDegreeHours: number; degreeHours: number };
  'slower-boards': { batchName: string };
  'air-unknown': Nothing;
  'air-cold': { tempC: number; limitC: number };
  'air-hot': { tempC: number; limitC: number };
  'air-damp': { rhPercent: number; limitPercent: number };
  'air-near-dew': { marginK: number; limitK: number };
  'was-wet': Nothing;
}
