import type { Gate, VerdictWord } from '../../daemon/contract/gate.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import { defaultPlans } from '../../daemon/rules/coating-plan.ts';
import type {
  CoatFact,
  IncomingReading,
  PlanFact,
  RefusedMessage,
} from '../../daemon/rules/facts.ts';
import { boardArea } from '../../daemon/science/paint.ts';
import type { Desk, WaitingBatch } from '../../sensors/shed/operator.ts';
import type { ShedPlan } from '../../sensors/shed/shed-plan.ts';
import type { ShedReading } from '../../sensors/shed/shed-sensors.ts';
import { openSite } from '../monitor/site.ts';
import { keptReadings } from './kept-readings.ts';

/** Boards of every judged batch; they only set how much paint is used. */
export const BOARDS = { count: 18, lengthMm: 3600, widthMm: 145, thicknessMm: 22 };
/** A verdict on a day’s air is made anew this often here; the daemon does so every ten minutes. */
const AIR_STANDS_MS = 3 * 3_600_000;
const COATING_MS = 1.5 * 3_600_000;

/**
 * The daemon from the message to the verdict, in this process and on a clock of its own: decoding and
 * judging of times, store, monitor. What is left out is what only carries: sockets, threads, pages.
 */
export function judgedSite(plan: ShedPlan, startAt: number, airFreshMs = AIR_STANDS_MS) {
  const kept = keptReadings();
  const site = openSite({}, { inMemory: true, readings: kept.source, airFreshMs });
  const { writer, newId } = site;
  let now = startAt;
  const readings: IncomingReading[] = [];
  const refused: RefusedMessage[] = [];
  const intake = createIntake({
    site: 'shed',
    maxPayloadBytes: 65_536,
    now: () => now,
    clockTrusted: () => true,
    queue: {
      add(more, faulty) {
        readings.push(...more);
        refused.push(...faulty);
      },
    },
  });

  const planId = newId();
  const sawn = defaultPlans.find(({ surface }) => surface === 'sawn');
  if (sawn === undefined) throw new Error('there is no plan for sawn boards');
  const coatingPlan: PlanFact = { id: planId, ...sawn, isDefault: true, createdAt: startAt };
  writer.createPlan(coatingPlan);

  const place = (name: string, kind: 'outdoors' | 'room' | 'rack', within: string | null) => {
    const id = newId();
    const volumeM3 = kind === 'room' ? plan.build.volumeM3 : null;
    const none = { facing: null, exposure: null };
    writer.createPlace({ id, name, kind, within, volumeM3, ...none, createdAt: startAt });
    return id;
  };
  const yard = place('Yard', 'outdoors', null);
  const room = place('Shed', 'room', null);
  const racks = new Map(plan.racks.map(({ name }) => [name, place(name, 'rack', room)]));
  site.monitor.factsChanged();
  const placeOf = (rack: string): string => {
    const id = racks.get(rack);
    if (id === undefined) throw new Error(`there is no rack ${rack}`);
    return id;
  };

  function commit(): void {
    if (readings.length + refused.length === 0) return;
    const group = { readings: readings.splice(0), refused: refused.splice(0), arrivedAt: now };
    const committed = writer.commitReadings(group);
    kept.keep(committed.fresh);
    site.monitor.committed(committed, now);
  }

  /** Sensors are placed as their owner did, at their first reading. */
  function placeSensors(): void {
    for (const { id, spot } of plan.sensors) {
      if (!site.reader.sensorById(id)) continue;
      const placeId =
        spot.kind === 'outdoors' ? yard : spot.kind === 'room' ? room : placeOf(spot.rack);
      site.put(id, placeId);
    }
  }

  const encoder = new TextEncoder();
  const coatsOf = (batchId: string) => site.monitor.facts().coats.get(batchId) ?? [];
  const coatFact = (batchId: string, index: number): CoatFact => {
    const fact = coatsOf(batchId).find((one) => one.coat === index);
    if (fact === undefined) throw new Error(`coat ${index} of ${batchId} was never recorded`);
    return fact;
  };
  const words = (batchId: string, index: number): Record<Gate, VerdictWord> =>
    site.monitor.assess.words(coatFact(batchId, index), now);

  const desk: Desk = {
    async begin(batch: WaitingBatch, rack: string) {
      const id = newId();
      writer.createBatch(
        {
          ...{ id, name: batch.name, species: 'scots-pine', surface: 'sawn', boards: BOARDS },
          ...{ planId, createdAt: now, closedAt: null },
        },
        { id: newId(), batchId: id, placeId: placeOf(rack), at: null },
      );
      site.monitor.factsChanged();
      return id;
    },
    async coated(batchId, index, coat, finishedAt) {
      const planned = coatingPlan.coats[index];
      if (planned === undefined) throw new Error(`the plan has no coat ${index}`);
      const { mixture, faces, spreadingM2PerL } = planned;
      const usedL = (boardArea({ ...BOARDS, faces }) / spreadingM2PerL) * coat.film;
      writer.createCoat(
        {
          ...{ id: newId(), batchId, coat: index, begunAt: finishedAt - COATING_MS, finishedAt },
          ...{ mixture, faces, usedL: Number(usedL.toFixed(1)) },
          ...{ colour: coat.colour, tin: coat.tin },
        },
        now,
        null,
      );
      site.monitor.factsChanged();
      const total = mixture.paint + mixture.rawLinseedOil + mixture.turpentine;
      return (usedL * mixture.turpentine) / total;
    },
    async tested(batchId, gate, passed, on, at) {
      const coatId = coatsOf(batchId).at(-1)?.id;
      if (coatId === undefined) throw new Error(`nothing lies on ${batchId}`);
      writer.createTest({ id: newId(), batchId, coatId, at, gate, passed, on }, now);
      site.monitor.factsChanged();
    },
    async moved(batchId, rack, at) {
      site.move(batchId, placeOf(rack), at);
    },
    async sunkIn(batchId, at) {
      writer.createRemark({ id: newId(), batchId, at, kind: 'sunk-in', text: null }, now);
      site.monitor.factsChanged();
    },
    async closed(batchId) {
      const batch = site.monitor.facts().batches.get(batchId);
      if (batch === undefined) throw new Error(`there is no batch ${batchId}`);
      writer.changeBatch({ ...batch, closedAt: now }, now);
      site.monitor.factsChanged();
    },
    verdict: async (batchId, index, gate) => words(batchId, index)[gate],
  };

  return {
    desk,
    intake,
    /** Takes in what the sensors sent, each at the moment it came. */
    take(sent: readonly ShedReading[]): void {
      for (const { sensor, quantity, value, at, sentAt } of sent) {
        // what was sent together is committed together
        if (sentAt !== now) commit();
        now = sentAt;
        const payload = encoder.encode(JSON.stringify({ value, time: new Date(at).toISOString() }));
        const topic = `boardcure/shed/sensor/${sensor}/${quantity}`;
        intake.take({ topic, payload, retained: false, backlog: false }, () => {});
      }
      commit();
    },
    /** Time goes on; as the daemon does every minute, faults of sensors are looked for. */
    async at(moment: number): Promise<void> {
      now = moment;
      await site.monitor.watchFaults(now);
    },
    placeSensors,
    verdicts: words,
    airflow: (rack: string) => site.monitor.airflowAt(placeOf(rack), now),
    close: () => site.close(),
  };
}
export type JudgedSite = ReturnType<typeof judgedSite>;
