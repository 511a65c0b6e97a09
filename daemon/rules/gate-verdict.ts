import type { Gate, Reason, VerdictWord } from '../contract/gate.ts';
import { risingRoot } from '../science/rising-root.ts';
import { probabilityReached, quantileReached, type Requirement } from '../science/touch.ts';
import { sentence } from '../wording/english.ts';
import type { CoatProgress } from './coat-progress.ts';
import { gateNeeds } from './gate-need.ts';
import { readyTimes, type TwoOutlooks } from './ready-times.ts';

/** Where a verdict changes. Settings; both assumptions. */
export interface VerdictLimits {
  testAt: number;
  readyAt: number;
  /** Standard deviation of the logarithm of what the boards of one coat need. */
  boardSpread: number;
}

export interface GateQuestion {
  gate: Gate;
  progress: CoatProgress;
  /** What lies ahead at the place; null where the air was never read, or the coat is over. */
  outlooks: TwoOutlooks | null;
  /** True while the place is warm enough for the coat to gain anything; null when unknown. */
  gaining: boolean | null;
  /** How long the newest reading is ago where that is too long, ms; else 0. */
  staleForMs: number;
  requirement: Requirement;
  /** How many coats’ tests the requirement was learned from. */
  learnedFrom: number;
  /** Factor of the film on what this coat needs. */
  film: number;
  own: { failedAt: number | null; passedAt: number | null };
  /** What else forbids the job now. */
  holds: Reason[];
  limits: VerdictLimits;
  /** The air at the place was judged poor: that may slow a coat, nobody knows how much. */
  stillAir: boolean;
  /** What speaks for a slow paint, such as an old tin; widens the spread like still air. */
  paintDoubts?: readonly Reason[];
  now: number;
}

export interface GateAnswer {
  verdict: VerdictWord;
  probability: number;
  earlyAt: number | null;
  likelyAt: number | null;
  lateAt: number | null;
  required: { early: number; likely: number; late: number };
  reasons: Reason[];
}

/** How much more a coat may need where the air stands still. Assumption. */
const stillAirSlows = 1.25;
/** How much more one out of an old or drier-poor tin may need. Assumption. */
const poorPaintSlows = 1.5;
/** A heat share of the sum from which it is worth a word. */
const heatWorthSaying = 0.03;
/** How far the two models must be apart to be worth a word. */
const modelsApart = 0.1;

/** The verdict on one question about one coat: may the boards be turned, stacked, mounted …? */
export function gateVerdict(question: GateQuestion): GateAnswer {
  const { own, limits } = question;
  const { plain, belief } = beliefs(question);
  const needs = ({ needed }: Belief) => {
    const atMost = own.passedAt ?? Number.POSITIVE_INFINITY;
    const at = (probability: number) => Math.min(needed(probability), atMost);
    return { early: at(0.1), likely: at(0.5), late: at(0.9) };
  };
  const required = needs(belief);
  const { verdict, probability, passed } = gateWord(question);
  return {
    verdict,
    probability,
    ...times(question, required, needs(plain), probability),
    required,
    reasons: reasons(question, required, probability >= limits.readyAt, passed),
  };
}

/** The verdict alone, without the times and reasons that cost most. */
export function gateWord(
  question: GateQuestion,
): Pick<GateAnswer, 'verdict' | 'probability'> & { passed: boolean } {
  const { progress, own, limits, holds } = question;
  const passed = own.passedAt !== null && progress.degreeHours >= own.passedAt;
  const probability = passed ? 1 : beliefs(question).belief.reached(progress.degreeHours);
  const cured = holds.length > 0 ? 'hold' : 'ready';
  const uncured = probability >= limits.testAt ? 'test' : 'wait';
  return { verdict: probability >= limits.readyAt ? cured : uncured, probability, passed };
}

/** What is believed, plainly and with what widens it. */
function beliefs(question: GateQuestion): { plain: Belief; belief: Belief } {
  const plain = beliefAbout(question, gateNeeds[question.gate].multiple * question.film);
  const airy = question.stillAir ? widened(plain, stillAirSlows) : plain;
  return { plain, belief: hasPaintDoubts(question) ? widened(airy, poorPaintSlows) : airy };
}

/** What is believed about one coat and one job: the chance at a sum, and the sum at a chance. */
interface Belief {
  /** @returns probability that the job is possible at a sum, °C·h */
  reached(degreeHours: number): number;
  /** @returns °C·h at which it is possible with a probability */
  needed(probability: number): number;
}

function beliefAbout(question: GateQuestion, scale: number): Belief {
  const { requirement, own, limits } = question;
  const known = {
    boardSpread: limits.boardSpread,
    ...(own.failedAt === null ? {} : { failedAt: own.failedAt / scale }),
  };
  const isPlain = own.failedAt === null && limits.boardSpread === 0;
  const plain = new Map([
    [0.1, requirement.p10],
    [0.5, requirement.p50],
    [0.9, requirement.p90],
  ]);
  return {
    reached: (degreeHours) => probabilityReached(requirement, degreeHours / scale, known),
    needed: (probability) =>
      ((isPlain ? plain.get(probability) : undefined) ??
        quantileReached(requirement, probability, known)) * scale,
  };
}

const hasPaintDoubts = ({ paintDoubts }: GateQuestion) => (paintDoubts?.length ?? 0) > 0;

/**
 * As likely as not the coat has been slowed by a factor: that widens the spread, and the verdict
 * names why.
 */
function widened(belief: Belief, slows: number): Belief {
  const reached = (degreeHours: number) =>
    (belief.reached(degreeHours) + belief.reached(degreeHours / slows)) / 2;
  return {
    reached,
    needed(probability) {
      const least = belief.needed(probability);
      const above = (factor: number) => reached(least * factor) - probability;
      return least * risingRoot(above, 1, slows);
    },
  };
}

function times(
  question: GateQuestion,
  required: GateAnswer['required'],
  plain: GateAnswer['required'],
  probability: number,
): Pick<GateAnswer, 'earlyAt' | 'likelyAt' | 'lateAt'> {
  const { outlooks, now } = question;
  if (outlooks === null) return { earlyAt: null, likelyAt: null, lateAt: null };
  const scale = gateNeeds[question.gate].multiple * question.film;
  // Where the air is poor the need is wider: each time is that of the need at its own chance.
  const readyAt = (widening: number) =>
    readyTimes(
      outlooks,
      { ...question, scale: scale * widening, boardSpread: question.limits.boardSpread },
      question.staleForMs,
    );
  const asPlain = readyAt(1);
  const isWidened = question.stillAir || hasPaintDoubts(question);
  const likely = isWidened ? readyAt(required.likely / plain.likely) : asPlain;
  const late = isWidened ? readyAt(required.late / plain.late) : asPlain;
  const ahead = (at: number | null, reachedAt: number) =>
    at === null || probability >= reachedAt ? null : Math.max(at, now);
  return {
    earlyAt: ahead(asPlain.early, 0.1),
    likelyAt: ahead(likely.likely, 0.5),
    lateAt: ahead(late.late, 0.9),
  };
}

function reasons(
  question: GateQuestion,
  required: GateAnswer['required'],
  cured: boolean,
  passed: boolean,
): Reason[] {
  const { gate, progress, outlooks, own } = question;
  const list: Reason[] = [];
  const { degreeHours } = progress;
  if (cured) list.push(...question.holds);
  if (passed) list.push(sentence('passed-test', { gate }));
  if (progress.lastReadingAt === null) list.push(sentence('no-readings', {}));
  else {
    const needed = required.likely;
    // Where a test passed at once nothing is needed.
    const percent = needed > 0 ? Math.round((100 * degreeHours) / needed) : 100;
    list.push(sentence('cured-so-far', { gate, degreeHours, neededDegreeHours: needed, percent }));
  }
  if (own.failedAt !== null && !passed) {
    list.push(sentence('failed-test', { failedDegreeHours: own.failedAt, degreeHours }));
  }
  if (!cured && !passed && degreeHours > 0) list.push(sentence('how-to-test', { gate }));
  const { gapHours } = progress;
  if (gapHours >= 1 && progress.coveredHours + gapHours > 0) {
    list.push(sentence('gaps', { gapHours, bridgedDegreeHours: progress.degreeHoursHigh }));
  }
  const hot = progress.uncappedDegreeHours - degreeHours;
  if (hot > heatWorthSaying * progress.uncappedDegreeHours) {
    list.push(sentence('heat', { hotDegreeHours: hot }));
  }
  const { otherDegreeHours } = progress;
  const apart = Math.abs(otherDegreeHours - degreeHours);
  if (apart > modelsApart * Math.max(otherDegreeHours, degreeHours, 1)) {
    list.push(sentence('models-differ', { degreeHours, otherDegreeHours }));
  }
  if (question.stillAir) list.push(sentence('air-poor', {}));
  list.push(...(question.paintDoubts ?? []));
  if (!cured && question.gaining === false) list.push(sentence('too-cold-to-cure', {}));
  if (!cured && outlooks !== null) list.push(sentence('outlook', {}));
  const { learnedFrom } = question;
  list.push(
    learnedFrom === 0
      ? sentence('starting-assumption', {})
      : sentence('learned', { coats: learnedFrom }),
  );
  return list;
}
