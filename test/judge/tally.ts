import type { JudgedJob, JudgedShed } from './judge-shed.ts';

const HOUR_MS = 3_600_000;
const RULE_MS = 72 * HOUR_MS;
/** Hours of the day in which somebody is there to act. */
const WORK = { fromHour: 6, toHour: 20 } as const;

/** How what was said compares with what was so. */
export interface Tally {
  /** jobs that were called ready at some time */
  readonly said: number;
  /** of those, how many too early when first said, and by how many hours at the median */
  readonly early: number;
  readonly earlyByHours: number;
  /** share of all hours called ready that were too early */
  readonly earlyHoursShare: number;
  /** hours from being there to being called ready: median and 90 % */
  readonly waited: number;
  readonly waited90: number;
  /** the same, counting hours of work alone */
  readonly workWaited: number;
}

/** A figure that a share of a list lies below; NaN of an empty list. */
export function quantile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

const isEarly = ({ readyAt, trueAt }: JudgedJob) =>
  readyAt !== null && (trueAt === null || trueAt > readyAt);

/** Compares some jobs. */
export function tally(jobs: readonly JudgedJob[]): Tally {
  const said = jobs.filter(({ readyAt }) => readyAt !== null);
  const early = said.filter(isEarly);
  const late = said.filter((job) => !isEarly(job));
  const sum = (of: (job: JudgedJob) => number) => jobs.reduce((total, job) => total + of(job), 0);
  const waits = late.map((job) => ((job.readyAt ?? 0) - (job.trueAt ?? 0)) / HOUR_MS);
  const known = early.filter(({ trueAt }) => trueAt !== null);
  return {
    said: said.length,
    early: early.length,
    earlyByHours: quantile(
      known.map((job) => ((job.trueAt ?? 0) - (job.readyAt ?? 0)) / HOUR_MS),
      0.5,
    ),
    earlyHoursShare: sum(({ earlyHours }) => earlyHours) / sum(({ readyHours }) => readyHours),
    waited: quantile(waits, 0.5),
    waited90: quantile(waits, 0.9),
    workWaited: quantile(
      late.map((job) => workHours(job.trueAt ?? 0, job.readyAt ?? 0)),
      0.5,
    ),
  };
}

function workHours(from: number, to: number): number {
  let hours = 0;
  for (let at = from; at < to; at += HOUR_MS) {
    const hour = new Date(at).getUTCHours();
    if (hour >= WORK.fromHour && hour < WORK.toHour) hours += 1;
  }
  return hours;
}

/**
 * What the fixed rule "three days, then the next job" would have done with the same coats.
 *
 * @param jobs - those that a batch waits for
 */
export function threeDays(jobs: readonly JudgedJob[]) {
  const known = jobs.filter(
    ({ trueAt, until, finishedAt }) => trueAt !== null || until - finishedAt > RULE_MS,
  );
  const afterHours = known.map(({ trueAt, finishedAt }) =>
    trueAt === null ? Number.POSITIVE_INFINITY : (trueAt - finishedAt - RULE_MS) / HOUR_MS,
  );
  const waits = afterHours.filter((hours) => hours <= 0).map((hours) => -hours);
  return {
    said: known.length,
    early: known.length - waits.length,
    waited: quantile(waits, 0.5),
    waited90: quantile(waits, 0.9),
  };
}

/** Place-hours by what was so and what was said of the air. */
export function airTable(sheds: readonly JudgedShed[]) {
  const counts = new Map<string, number>();
  for (const [key, count] of sheds.flatMap(({ air }) => [...air])) {
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  return (['poor', 'between', 'good'] as const).map((isSo) => ({
    isSo,
    poor: counts.get(`${isSo} poor`) ?? 0,
    cannotTell: counts.get(`${isSo} cannot-tell`) ?? 0,
    good: counts.get(`${isSo} good`) ?? 0,
  }));
}

/** Jobs by how many tests their paint had had when they were first called ready. */
export function byTests(jobs: readonly JudgedJob[]) {
  const said = jobs.filter(({ readyAt }) => readyAt !== null);
  const between = (least: number, most: number) =>
    said.filter(({ testsBefore }) => testsBefore >= least && testsBefore <= most);
  return [
    { tests: 'none', jobs: between(0, 0) },
    { tests: '1 or 2', jobs: between(1, 2) },
    { tests: '3 or more', jobs: between(3, Number.POSITIVE_INFINITY) },
  ] as const;
}
