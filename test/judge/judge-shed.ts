import { type Gate, gates } from '../../daemon/contract/gate.ts';
import { coatOf, drawnTins, type Tin } from '../../sensors/shed/drawn-paints.ts';
import { drawnShed } from '../../sensors/shed/drawn-shed.ts';
import { type LaidCoat, shedOperator, type WaitingBatch } from '../../sensors/shed/operator.ts';
import { type Random, seededRandom } from '../../sensors/shed/physics/random.ts';
import { createShed } from '../../sensors/shed/shed.ts';
import { type AirFlag, type AirTruth, airTruth } from './air-truth.ts';
import { judgedSite } from './judged-site.ts';

const HOUR_MS = 3_600_000;
const STEP_MS = HOUR_MS / 2;
/** How often the air of every place is asked about. */
const AIR_EVERY_HOURS = 3;
const COATS = 3;

/** What was said of one job of one coat, against what was so. */
export interface JudgedJob {
  readonly gate: Gate;
  readonly coat: number;
  /** whether this is what the batch waits for: recoating, or mounting after the last coat */
  readonly isGoal: boolean;
  readonly finishedAt: number;
  /** when all but the slowest tenth of the boards were there, to the hour; null while they never were */
  trueAt: number | null;
  /** when it was first called ready, to the hour */
  readyAt: number | null;
  /** touch tests that this paint had had by then */
  testsBefore: number;
  /** hours in which it was called ready, and in how many of them too early */
  readyHours: number;
  earlyHours: number;
  /** until when it was looked at; the coat's end or the end of the run */
  until: number;
}

export interface JudgedShed {
  readonly seed: number;
  readonly heated: boolean;
  readonly hasFaults: boolean;
  readonly tests: boolean;
  readonly jobs: readonly JudgedJob[];
  /** what was said of the air, against what was so; counts of place-hours */
  readonly air: ReadonlyMap<`${AirTruth} ${AirFlag}`, number>;
  readonly refused: number;
}

export interface JudgeOptions {
  readonly days: number;
  /** sensors that fail in the course of it */
  readonly faults: number;
  /** whether the operator feels the boards */
  readonly tests: boolean;
}

/** Lets somebody work in an invented shed, and compares what the daemon says with what is so. */
export async function judgeShed(seed: number, options: JudgeOptions): Promise<JudgedShed> {
  const { plan, startAt, heated } = drawnShed(seed, options);
  const shed = createShed({ seed, startAt, plan });
  const site = judgedSite(plan, shed.at());
  const random = seededRandom(seed, 50);
  const watched: { laid: LaidCoat; jobs: JudgedJob[]; live: boolean }[] = [];
  const testsOf = new Map<string, number>();
  const paintOf = ({ colour, index }: LaidCoat) => `${colour} ${index}`;
  let batchesOpen = 0;

  const operator = shedOperator({
    shed,
    desk: site.desk,
    racks: plan.racks.map(({ name }) => name),
    nextBatch: () => {
      // a rack stays bare, so that turned boards may be carried over
      if (batchesOpen >= plan.racks.length - 1) return null;
      batchesOpen += 1;
      return drawnBatch(random, drawnTins(seed, 2));
    },
    habits: {
      ...{ tests: options.tests, onOffcut: 0.7, movesWhenTurned: true, forgetsMoves: 0.1 },
      againAfterMs: 3 * HOUR_MS,
    },
    random,
    onlooker: {
      laid: (laid) => watched.push({ laid, jobs: jobsOf(laid), live: true }),
      tested: (laid) => testsOf.set(paintOf(laid), (testsOf.get(paintOf(laid)) ?? 0) + 1),
      ended(laid) {
        const one = watched.find((other) => other.laid === laid);
        if (one) one.live = false;
        if (laid.index === COATS - 1) batchesOpen -= 1;
      },
    },
  });

  const truth = airTruth(shed);
  const air = new Map<`${AirTruth} ${AirFlag}`, number>();
  const end = startAt + options.days * 24 * HOUR_MS;

  function judgeCoats(now: number): void {
    for (const { laid, jobs, live } of watched) {
      const isSo = shed.truth(laid.id);
      const said = live ? site.verdicts(laid.batchId, laid.index) : null;
      for (const job of jobs) {
        if (isSo?.[job.gate] && job.trueAt === null) job.trueAt = now;
        if (said === null) continue;
        job.until = now;
        // held is cured enough as well: something else forbids it for now
        if (said[job.gate] !== 'ready' && said[job.gate] !== 'hold') continue;
        if (job.readyAt === null) {
          job.readyAt = now;
          job.testsBefore = testsOf.get(paintOf(laid)) ?? 0;
        }
        job.readyHours += 1;
        if (job.trueAt === null) job.earlyHours += 1;
      }
    }
  }

  function judgeAir(): void {
    for (const { name } of plan.racks) {
      const isSo = truth.at(name);
      if (isSo === null) continue;
      const key = `${isSo} ${site.airflow(name)}` as const;
      air.set(key, (air.get(key) ?? 0) + 1);
    }
  }

  let hours = 0;
  try {
    for (let at = startAt + STEP_MS; at <= end; at += STEP_MS) {
      site.take(shed.advanceTo(at));
      await site.at(at);
      truth.look();
      if (at === startAt + STEP_MS) site.placeSensors();
      await operator.lookAround();
      if ((at - startAt) % HOUR_MS !== 0) continue;
      hours += 1;
      judgeCoats(at);
      if (hours % AIR_EVERY_HOURS === 0) judgeAir();
      if (hours % 24 === 0) site.placeSensors();
    }
    return {
      ...{ seed, heated, tests: options.tests, hasFaults: options.faults > 0 },
      jobs: watched.flatMap(({ jobs }) => jobs),
      air,
      refused: site.intake.counts.refused,
    };
  } finally {
    site.close();
  }
}

function jobsOf({ index, finishedAt }: LaidCoat): JudgedJob[] {
  const goal: Gate = index === COATS - 1 ? 'mount' : 'recoat';
  return gates.map((gate) => ({
    ...{ gate, coat: index, isGoal: gate === goal, finishedAt },
    ...{ trueAt: null, readyAt: null, testsBefore: 0, readyHours: 0, earlyHours: 0 },
    until: finishedAt,
  }));
}

function drawnBatch(random: Random, colours: readonly (readonly Tin[])[]): WaitingBatch {
  const tins = colours[Math.floor(random.uniform() * colours.length)] ?? [];
  return {
    name: 'boards',
    dryMassKg: random.between(60, 160),
    moisturePercent: random.between(12, 18),
    coats: COATS,
    coat(index) {
      const tin = tins[Math.floor(random.uniform() * tins.length)];
      if (tin === undefined) throw new Error('no tin is on the shelf');
      const film = Math.exp(0.08 * random.normal());
      const truth = coatOf(tin, index, film, random);
      return { colour: tin.colour, tin: tin.number, film, truth };
    },
  };
}
