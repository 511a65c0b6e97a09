import { type RackName, rackNames } from '../../sensors/shed/cart-shed.ts';
import type { Shed } from '../../sensors/shed/shed.ts';
import type { Batch } from '../contract/batch.ts';
import type { Gate } from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import { boardArea, mixture } from '../science/paint.ts';
import type { Api } from './demo-api.ts';
import { COAT_SLOWNESS, DRY_KG_PER_M3, JOBS, type Job } from './demo-jobs.ts';

/** The scripted operator: coats boards, feels them by hand, and records it all in the daemon. */
export interface Operator {
  /** Lays the next batch on a rack and coats it; finished at the shed's present moment. */
  start(rack: RackName): Promise<void>;
  /** The next coat on what lies there, finished at the shed's present moment. */
  coat(rack: RackName): Promise<void>;
  /** A hand test at the shed's present moment. @returns whether it passed */
  test(rack: RackName, gate: Gate): Promise<boolean>;
  /** Looks at the page as someone in the shed would, and does what is due. */
  lookAround(): Promise<void>;
}

interface Work {
  readonly job: Job;
  readonly batchId: string;
  readonly coatCount: number;
  coat: number;
  coatedAt: number;
  passed: Set<Gate>;
  failedAt: number | null;
}

const HOUR_MS = 3_600_000;
const COATING_MS = 1.5 * HOUR_MS;
const LOOKS_EVERY_MS = 1.5 * HOUR_MS;
const WORKS_FROM_HOUR_UTC = 6;
const WORKS_TO_HOUR_UTC = 20;
const AFTER_A_FAILED_TEST_MS = 8 * HOUR_MS;
/** After this long someone feels the boards whatever the page says: assumption, no source. */
const PATIENCE_MS = 110 * HOUR_MS;
const LOSS_PERCENT = 5;

/**
 * Puts the operator into the shed.
 *
 * @param api - the daemon
 * @param shed - what the hand feels, hidden from the daemon
 * @param placeIds - the racks as the daemon knows them
 * @returns the operator, who starts with empty racks
 */
export function demoOperator(
  api: Api,
  shed: Shed,
  placeIds: Readonly<Record<RackName, string>>,
): Operator {
  const work: Record<RackName, Work | null> = { door: null, back: null };
  /** the earliest moment of the next job on the rack */
  const dueAt: Record<RackName, number> = { door: shed.at(), back: shed.at() };
  let jobs = 0;
  let nextLookAt = shed.at();

  const atWork = () => {
    const hour = new Date(shed.at()).getUTCHours();
    return hour >= WORKS_FROM_HOUR_UTC && hour < WORKS_TO_HOUR_UTC;
  };

  const workOn = (rack: RackName): Work => {
    const current = work[rack];
    if (current === null) throw new Error(`nothing lies on the rack ${rack}`);
    return current;
  };

  const record = async (rack: RackName, plan: Batch['plan']) => {
    const current = workOn(rack);
    const planned = plan.coats[current.coat];
    if (planned === undefined) throw new Error(`the plan has no coat ${current.coat}`);
    const areaM2 = boardArea({ ...current.job.boards, faces: planned.faces });
    const { totalL } = mixture({
      areaM2,
      spreadingM2PerL: planned.spreadingM2PerL,
      parts: Object.values(planned.mixture),
      lossPercent: LOSS_PERCENT,
    });
    await api('createCoat', {
      params: { id: current.batchId },
      body: {
        coat: current.coat,
        begunAt: toMoment(shed.at() - COATING_MS),
        finishedAt: toMoment(shed.at()),
        usedL: Number(totalL.toFixed(1)),
        colour: current.job.colour,
      },
    });
    current.coatedAt = shed.at();
    current.passed = new Set();
    current.failedAt = null;
    shed.coat(rack, current.job.slowness * (COAT_SLOWNESS[current.coat] ?? 1));
  };

  const operator: Operator = {
    async start(rack) {
      const job = JOBS[jobs % JOBS.length] as Job;
      const round = Math.floor(jobs / JOBS.length);
      jobs += 1;
      const { boards } = job;
      const volumeM3 = (boards.count * boards.lengthMm * boards.widthMm * boards.thicknessMm) / 1e9;
      shed.lay(rack, {
        dryMassKg: volumeM3 * DRY_KG_PER_M3[job.species],
        moisturePercent: job.moisturePercent,
      });
      const batch = await api('createBatch', {
        body: {
          name: round === 0 ? job.name : `${job.name} ${round + 1}`,
          placeId: placeIds[rack],
          species: job.species,
          surface: job.surface,
          boards,
        },
      });
      const coatCount = batch.plan.coats.length;
      const fresh = { coat: 0, coatedAt: shed.at(), passed: new Set<Gate>(), failedAt: null };
      work[rack] = { job, batchId: batch.id, coatCount, ...fresh };
      await record(rack, batch.plan);
    },

    async coat(rack) {
      const current = workOn(rack);
      const batch = await api('readBatch', { params: { id: current.batchId } });
      current.coat += 1;
      await record(rack, batch.plan);
    },

    async test(rack, gate) {
      const current = workOn(rack);
      const passed = shed.touch(rack, gate);
      await api('createTest', {
        params: { id: current.batchId },
        body: { at: toMoment(shed.at()), gate, passed, on: 'offcut' },
      });
      if (passed) current.passed.add(gate);
      else current.failedAt = shed.at();
      return passed;
    },

    async lookAround() {
      if (shed.at() < nextLookAt || !atWork()) return;
      nextLookAt = shed.at() + LOOKS_EVERY_MS;
      for (const rack of rackNames) await attend(rack);
    },
  };

  const attend = async (rack: RackName) => {
    const current = work[rack];
    if (shed.at() < dueAt[rack]) return;
    if (current === null) return operator.start(rack);
    const last = current.coat === current.coatCount - 1;
    const goal: Gate = last ? 'mount' : 'recoat';
    if (current.passed.has(goal)) return last ? finish(rack) : operator.coat(rack);
    const gate: Gate = current.passed.has('turn') ? goal : 'turn';
    if (!(await worthTesting(current, gate))) return;
    const passed = await operator.test(rack, gate);
    if (passed && gate === goal) {
      if (current.coat === 0) await remarkSunkIn(current);
      // stirring, straining and brushing, or clearing the rack, come first
      dueAt[rack] = shed.at() + COATING_MS;
    }
  };

  const worthTesting = async (current: Work, gate: Gate): Promise<boolean> => {
    const { failedAt, coatedAt } = current;
    if (failedAt !== null && shed.at() < failedAt + AFTER_A_FAILED_TEST_MS) return false;
    if (shed.at() > coatedAt + PATIENCE_MS) return true;
    const coats = await api('listCoats', { params: { id: current.batchId } });
    const verdict = coats.find(({ coat }) => coat === current.coat)?.gates[gate].verdict;
    return verdict === 'test' || verdict === 'ready';
  };

  const remarkSunkIn = (current: Work) =>
    api('createRemark', {
      params: { id: current.batchId },
      body: { at: toMoment(shed.at()), kind: 'sunk-in' },
    });

  const finish = async (rack: RackName) => {
    const { batchId } = workOn(rack);
    await api('changeBatch', { params: { id: batchId }, body: { closed: true } });
    shed.lay(rack, null);
    work[rack] = null;
    dueAt[rack] = shed.at() + COATING_MS;
  };

  return operator;
}
