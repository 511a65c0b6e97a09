import { type Coating, type CoatingStep, coatingSteps } from '../contract/coating.ts';
import { toMoment } from '../contract/moment.ts';
import type { Face, PlannedCoat } from '../contract/plan.ts';
import type { Sentence } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { CoatFact, RemarkFact } from './facts.ts';
import type { CoatingFact, CoatingStepFact } from './trade-facts.ts';

const minuteMs = 60_000;

/** The steps that a coat has: those of its faces, and always the rags. */
export function stepsOf(faces: readonly Face[]): CoatingStep[] {
  const needed: Readonly<Record<CoatingStep, boolean>> = {
    edges: faces.includes('edges'),
    back: faces.includes('back'),
    face: faces.includes('face'),
    ends: faces.includes('ends'),
    'ends-again': faces.includes('ends'),
    rags: true,
  };
  return coatingSteps.filter((step) => needed[step]);
}

/** When to look for what still shines after a coat, ms: common practice, no source. */
export interface LookTimes {
  afterMs: number;
  untilMs: number;
}
export const usualLook: LookTimes = { afterMs: 30 * minuteMs, untilMs: 60 * minuteMs };
/** After this the oil has set and a look helps no more. Assumption. */
const lookHelpsMs = 4 * 60 * minuteMs;

/** What to look for after a coat. Common practice, no source. */
export const lookWords = (planned: Pick<PlannedCoat, 'soaksIn'> | undefined): Sentence =>
  sentence(planned?.soaksIn ? 'look/soaks-in' : 'look/film', {});

const answers: readonly RemarkFact['kind'][] = ['sunk-in', 'still-standing', 'wiped-off', 'runs'];

/** Whether somebody has looked at a coat after it was finished. */
export function wasLookedAt(coat: CoatFact, remarks: readonly RemarkFact[]): boolean {
  return remarks.some(
    (remark) =>
      answers.includes(remark.kind) &&
      remark.at >= coat.finishedAt &&
      remark.at <= coat.finishedAt + lookHelpsMs,
  );
}

/** Whether it is time to look at a coat. */
export function lookIsDue(
  coat: CoatFact,
  remarks: readonly RemarkFact[],
  now: number,
  times: LookTimes = usualLook,
): boolean {
  const since = now - coat.finishedAt;
  return since >= times.afterMs && since < lookHelpsMs && !wasLookedAt(coat, remarks);
}

/** A coat on its way as the outside sees it. */
export function coatingReply(
  coating: CoatingFact,
  given: {
    planned: PlannedCoat | undefined;
    coat: CoatFact | null;
    steps: readonly CoatingStepFact[];
    remarks: readonly RemarkFact[];
    times?: LookTimes;
  },
): Coating {
  const { planned, coat, steps, remarks, times = usualLook } = given;
  const faces = coat?.faces ?? planned?.faces ?? [];
  return {
    id: coating.id,
    batchId: coating.batchId,
    coat: coating.coat,
    name: planned?.name ?? sentence('coat-name/number', { number: coating.coat + 1 }).text,
    begunAt: toMoment(coating.begunAt),
    tinId: coating.tinId,
    coatId: coating.coatId,
    givenUpAt: toMoment(coating.givenUpAt),
    steps: stepsOf(faces).map((step) => ({
      step,
      ...sentence(`step/${step}`, {}),
      at: toMoment(steps.find((one) => one.step === step)?.at ?? null),
    })),
    look:
      coat === null
        ? null
        : {
            fromAt: toMoment(coat.finishedAt + times.afterMs),
            untilAt: toMoment(coat.finishedAt + times.untilMs),
            ...lookWords(planned),
            answered: wasLookedAt(coat, remarks),
          },
  };
}
