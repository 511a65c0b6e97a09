import { COAT_SLOWNESS } from '../../sensors/shed/drawn-paints.ts';
import { type ShedOperator, shedOperator } from '../../sensors/shed/operator.ts';
import { MIDDLING_PAINT, slower } from '../../sensors/shed/physics/paint-truth.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';
import type { Shed } from '../../sensors/shed/shed.ts';
import type { Api } from './demo-api.ts';
import { type BatchOnPaper, demoDesk } from './demo-desk.ts';
import { DRY_KG_PER_M3, JOBS, type Job } from './demo-jobs.ts';

const COATS = 3;
/** Tins of one colour differ by about this much either way: assumption, no source. */
const TIN_SPREAD = 0.08;

/**
 * Puts the scripted operator of the demo into the shed.
 *
 * @param api - the daemon
 * @param shed - what the hand feels, hidden from the daemon
 * @param placeIds - the racks as the daemon knows them
 * @returns the operator, who starts with empty racks
 */
export function demoOperator(
  api: Api,
  shed: Shed,
  placeIds: Readonly<Record<string, string>>,
): ShedOperator {
  const random = seededRandom(1, 30);
  let jobs = 0;

  const onPaper = (job: Job, round: number): BatchOnPaper => {
    const { boards, species, surface, moisturePercent } = job;
    const volumeM3 = (boards.count * boards.lengthMm * boards.widthMm * boards.thicknessMm) / 1e9;
    return {
      name: round === 0 ? job.name : `${job.name} ${round + 1}`,
      ...{ species, surface, boards, moisturePercent, coats: COATS },
      dryMassKg: volumeM3 * DRY_KG_PER_M3[species],
      coat: (index) => {
        const spread = 1 + TIN_SPREAD * (2 * random.uniform() - 1);
        const slowness = job.slowness * (COAT_SLOWNESS[index] ?? 1) * spread;
        const truth = slower(MIDDLING_PAINT, slowness);
        return { colour: job.colour, tin: `${job.colour} ${index + 1}`, film: 1, truth };
      },
    };
  };
  const waiting = new Map<string, BatchOnPaper>();

  return shedOperator({
    shed,
    desk: demoDesk(api, placeIds, ({ name }) => {
      const batch = waiting.get(name);
      if (batch === undefined) throw new Error(`nobody brought a batch ${name}`);
      return batch;
    }),
    racks: shed.plan.racks.map(({ name }) => name),
    nextBatch() {
      const job = JOBS[jobs % JOBS.length] as Job;
      const batch = onPaper(job, Math.floor(jobs / JOBS.length));
      jobs += 1;
      waiting.set(batch.name, batch);
      return batch;
    },
    habits: {
      ...{ tests: true, onOffcut: 1, movesWhenTurned: false, forgetsMoves: 0 },
      againAfterMs: 8 * 3_600_000,
    },
    random,
  });
}
