import type { Gate } from '../../daemon/contract/gate.ts';
import type { Felt } from './physics/coated-boards.ts';
import type { PaintTruth } from './physics/paint-truth.ts';
import type { Random } from './physics/random.ts';
import type { Shed } from './shed.ts';

/** A coat that is about to be laid, as the painter decides it. */
export interface CoatToLay {
  readonly colour: string;
  readonly tin: string;
  /** how much thicker than planned, 1 for as planned */
  readonly film: number;
  readonly truth: PaintTruth;
}

/** A batch that waits for a rack. */
export interface WaitingBatch {
  readonly name: string;
  readonly dryMassKg: number;
  readonly moisturePercent: number;
  readonly coats: number;
  /** decides a coat when its turn has come */
  coat(index: number): CoatToLay;
}

/** The daemon as whoever works in the shed uses it: records what was done, and asks. */
export interface Desk {
  begin(batch: WaitingBatch, rack: string): Promise<string>;
  /** @returns litres of turpentine that were in it */
  coated(id: string, index: number, coat: CoatToLay, finishedAt: number): Promise<number>;
  tested(id: string, gate: Gate, passed: boolean, on: Felt, at: number): Promise<void>;
  moved(id: string, rack: string, at: number): Promise<void>;
  sunkIn(id: string, at: number): Promise<void>;
  closed(id: string): Promise<void>;
  verdict(id: string, coat: number, gate: Gate, at: number): Promise<string>;
}

/** How somebody works. */
export interface Habits {
  /** feels the boards; otherwise goes by what the page says alone */
  readonly tests: boolean;
  /** share of the tests that are felt on the offcut rather than on boards */
  readonly onOffcut: number;
  /** carries a batch to a bare rack, where there is one, once it may be turned */
  readonly movesWhenTurned: boolean;
  /** share of the moves that are never recorded */
  readonly forgetsMoves: number;
  /** how long boards that failed a test are left alone, ms */
  readonly againAfterMs: number;
}

/** Told of every coat, so that somebody may judge what was said of it. */
export interface Onlooker {
  laid?(coat: LaidCoat): void;
  tested?(coat: LaidCoat, gate: Gate, passed: boolean): void;
  ended?(coat: LaidCoat): void;
}

export interface LaidCoat {
  /** the shed's number of it */
  readonly id: number;
  readonly batchId: string;
  readonly index: number;
  readonly colour: string;
  readonly finishedAt: number;
}

interface Work {
  readonly batch: WaitingBatch;
  readonly batchId: string;
  coat: LaidCoat;
  passed: Set<Gate>;
  failedAt: number | null;
}

export interface ShedOperator {
  /** Lays the next batch on a rack and coats it; finished at the shed's present moment. */
  start(rack: string): Promise<void>;
  /** The next coat on what lies there. */
  coat(rack: string): Promise<void>;
  /** A hand test now. @returns whether it passed */
  test(rack: string, gate: Gate): Promise<boolean>;
  /** Looks at the page as someone in the shed would, and does what is due. */
  lookAround(): Promise<void>;
}

const HOUR_MS = 3_600_000;
export const COATING_MS = 1.5 * HOUR_MS;
const LOOKS_EVERY_MS = 1.5 * HOUR_MS;
const WORKS_FROM_HOUR_UTC = 6;
const WORKS_TO_HOUR_UTC = 20;
/** After this long someone feels the boards whatever the page says: assumption, no source. */
const PATIENCE_MS = 110 * HOUR_MS;
/** Density of turpentine, g/L. From memory: about 0.86 kg/L. */
const TURPENTINE_G_PER_L = 860;

/**
 * Puts somebody into the shed who coats boards, turns and feels them, and records it all but for
 * what is forgotten.
 *
 * @param parts - `racks`: those worked on, in the order in which they are looked at; `nextBatch`:
 *   what comes onto a bare rack, null to leave it bare
 */
export function shedOperator(parts: {
  readonly shed: Shed;
  readonly desk: Desk;
  readonly racks: readonly string[];
  readonly nextBatch: () => WaitingBatch | null;
  readonly habits: Habits;
  readonly random: Random;
  readonly onlooker?: Onlooker;
}): ShedOperator {
  const { shed, desk, racks, nextBatch, habits, random, onlooker = {} } = parts;
  const work = new Map<string, Work>();
  /** the earliest moment of the next job on the rack */
  const dueAt = new Map<string, number>();
  let nextLookAt = shed.at();

  const atWork = () => {
    const hour = new Date(shed.at()).getUTCHours();
    return hour >= WORKS_FROM_HOUR_UTC && hour < WORKS_TO_HOUR_UTC;
  };

  const workOn = (rack: string): Work => {
    const current = work.get(rack);
    if (current === undefined) throw new Error(`nothing lies on the rack ${rack}`);
    return current;
  };

  async function lay(rack: string, batch: WaitingBatch, batchId: string, index: number) {
    const finishedAt = shed.at();
    const coat = batch.coat(index);
    const turpentineL = await desk.coated(batchId, index, coat, finishedAt);
    const id = shed.coat(rack, coat.truth, turpentineL * TURPENTINE_G_PER_L);
    const laid: LaidCoat = { id, batchId, index, colour: coat.colour, finishedAt };
    work.set(rack, { batch, batchId, coat: laid, passed: new Set(), failedAt: null });
    onlooker.laid?.(laid);
  }

  async function attend(rack: string): Promise<void> {
    if (shed.at() < (dueAt.get(rack) ?? 0)) return;
    const current = work.get(rack);
    if (current === undefined) return operator.start(rack);
    const last = current.coat.index === current.batch.coats - 1;
    const goal: Gate = last ? 'mount' : 'recoat';
    const gate: Gate = current.passed.has('turn') ? goal : 'turn';
    if (current.passed.has(goal)) return last ? finish(rack) : operator.coat(rack);
    if (!(await isDue(current, gate))) return;
    if (habits.tests) {
      if (!(await operator.test(rack, gate))) return;
    } else {
      current.passed.add(gate);
    }
    if (gate === goal) {
      if (current.coat.index === 0) await desk.sunkIn(current.batchId, shed.at());
      // stirring, straining and brushing, or clearing the rack, come first
      dueAt.set(rack, shed.at() + COATING_MS);
    } else {
      await carryOn(rack);
    }
  }

  /** Whether the page says that it is time: to feel it, or without tests to do it. */
  async function isDue(current: Work, gate: Gate): Promise<boolean> {
    const { failedAt, coat, batchId } = current;
    const now = shed.at();
    if (failedAt !== null && now < failedAt + habits.againAfterMs) return false;
    if (habits.tests && now > coat.finishedAt + PATIENCE_MS) return true;
    const verdict = await desk.verdict(batchId, coat.index, gate, now);
    return verdict === 'ready' || (habits.tests && verdict === 'test');
  }

  /** Turned boards make room where the next ones are coated. */
  async function carryOn(rack: string): Promise<void> {
    const bare = racks.find((other) => !work.has(other));
    if (!habits.movesWhenTurned || bare === undefined) return;
    const current = workOn(rack);
    shed.move(rack, bare);
    work.set(bare, current);
    work.delete(rack);
    if (random.uniform() >= habits.forgetsMoves) await desk.moved(current.batchId, bare, shed.at());
  }

  async function finish(rack: string): Promise<void> {
    const { batchId, coat } = workOn(rack);
    onlooker.ended?.(coat);
    await desk.closed(batchId);
    shed.lay(rack, null);
    work.delete(rack);
    dueAt.set(rack, shed.at() + COATING_MS);
  }

  const operator: ShedOperator = {
    async start(rack) {
      const batch = nextBatch();
      if (batch === null) return;
      const { dryMassKg, moisturePercent } = batch;
      shed.lay(rack, { dryMassKg, moisturePercent, surfacePercent: moisturePercent });
      await lay(rack, batch, await desk.begin(batch, rack), 0);
    },
    async coat(rack) {
      const { batch, batchId, coat } = workOn(rack);
      onlooker.ended?.(coat);
      await lay(rack, batch, batchId, coat.index + 1);
    },
    async test(rack, gate) {
      const current = workOn(rack);
      const on: Felt = random.uniform() < habits.onOffcut ? 'offcut' : 'board';
      const passed = shed.touch(rack, gate, on);
      await desk.tested(current.batchId, gate, passed, on, shed.at());
      onlooker.tested?.(current.coat, gate, passed);
      if (passed) current.passed.add(gate);
      else current.failedAt = shed.at();
      return passed;
    },
    async lookAround() {
      if (shed.at() < nextLookAt || !atWork()) return;
      nextLookAt = shed.at() + LOOKS_EVERY_MS;
      for (const rack of racks) await attend(rack);
    },
  };
  return operator;
}
