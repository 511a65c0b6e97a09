import type { Species } from '../../contract/batch.ts';
import type { PlaceKind } from '../../contract/place.ts';
import type { Surface } from '../../contract/plan.ts';
import type { Quantity } from '../../contract/quantity.ts';
import type { StateBefore } from '../../contract/timber.ts';
import type { Inner, Nothing } from '../phrase.ts';

/** What an id may name. */
export type Thing =
  | 'place'
  | 'batch'
  | 'coating-plan'
  | 'tin'
  | 'device'
  | 'calibration'
  | 'notice'
  | 'topic-rule';

/** What exactly is wrong with a request. Coats are told by their index where somebody typed it. */
export interface DetailSentences {
  'no-such-thing': { thing: Thing; id: string };
  'time-too-early': { at: number; earliestAt: number };
  'time-to-come': { at: number; now: number };
  'end-before-start': Nothing;
  'place-not-within': { kind: PlaceKind; within: PlaceKind };
  'no-place-to-coat': Nothing;
  'no-such-coat': { planName: string; coats: number; coat: number };
  'no-such-coat/in-batch': { id: string };
  'no-such-coat/on-its-way': { id: string };
  'coat-begun-after': Nothing;
  'coat-out-of-order': { coat: number; finishedAt: number };
  'coat-recorded': { coat: number };
  /** `number`: counted from 1. */
  'coat-on-already': { number: number };
  'coat-begun-already': { number: number };
  'coat-ended-already': Nothing;
  'coat-of-origin': { batchName: string };
  'no-coat-by-then': { at: number };
  'batch-without-coat': { batchName: string };
  'plan-too-short': { number: number; planName: string; coats: number };
  'plan-changed': { version: number };
  'no-default-plan': { surface: Surface };
  'no-batch-like-it': { field: 'lengthMm' | 'widthMm' | 'thicknessMm' };
  'figure-impossible': { value: number; quantity: Quantity; low: number; high: number };
  'batch-closed': { batchName: string };
  'boards-went-on': { batchName: string };
  'merge-itself': Nothing;
  'merge-later-coat': { batchName: string; number: number; at: number };
  /** `differences`: each an `unlike`. */
  'boards-unlike': { differences: Inner[] };
  'unlike/timber': { ours: Species; theirs: Species };
  'unlike/surface': { ours: Surface; theirs: Surface };
  'unlike/length': { oursMm: number; theirsMm: number };
  'unlike/width': { oursMm: number; theirsMm: number };
  'unlike/thickness': { oursMm: number; theirsMm: number };
  /** null where nobody said. */
  'unlike/state': { ours: StateBefore | null; theirs: StateBefore | null };
  'unlike/plan': Nothing;
  'unlike/coats': { ours: number; theirs: number };
  'unlike/mixture': { number: number };
  'unlike/colour': { number: number };
  'unlike/faces': { number: number };
  'split-too-many': { batchName: string; left: number; boards: number };
  'no-move-in-batch': { id: string };
  'move-not-to-wall': Nothing;
  'no-photo-in-batch': { id: string };
  'no-photo': Nothing;
  'no-picture': Nothing;
  'pictures-full': { mostMiB: number };
  'sensor-unheard': { sensor: string };
  'sensor-unheard/yet-to-come': { sensor: string };
  'sensor-said-nothing': { minutes: number; at: number };
  'from-needs-place': Nothing;
  'calibration-withdrawn': { id: string };
  'too-many-readings': { readings: number };
  'too-many-rules': { rules: number };
  'comparison-too-long': { hours: number };
  'two-sensors-at-least': Nothing;
  'no-offsets-offered': Nothing;
  'could-not-answer': Nothing;
}
