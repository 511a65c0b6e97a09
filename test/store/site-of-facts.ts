import { v7 as newId } from 'uuid';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type {
  BatchFact,
  CoatFact,
  IncomingReading,
  MoveFact,
  NoticeFact,
  PlaceFact,
  PlanFact,
  ReadingGroup,
  TouchTestFact,
} from '../../daemon/rules/facts.ts';
import type { Verbs } from './store-sides.ts';

export const hourMs = 3_600_000;
export const day1 = Date.UTC(2026, 4, 4, 6);

export const place = (given: Partial<PlaceFact> = {}): PlaceFact => ({
  id: newId(),
  name: 'Shed',
  kind: 'room',
  within: null,
  volumeM3: null,
  facing: null,
  exposure: null,
  createdAt: day1,
  ...given,
});

export const plan = (given: Partial<PlanFact> = {}): PlanFact => ({
  id: newId(),
  name: 'One coat',
  surface: 'sawn',
  coats: [
    {
      name: 'Only coat',
      mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 },
      faces: ['face'],
      spreadingM2PerL: 10,
      soaksIn: false,
    },
  ],
  isDefault: true,
  createdAt: day1,
  ...given,
});

export const batch = (planId: string, given: Partial<BatchFact> = {}): BatchFact => ({
  id: newId(),
  name: 'South gable',
  species: 'norway-spruce',
  surface: 'sawn',
  boards: { count: 40, lengthMm: 4200, widthMm: 145, thicknessMm: 22 },
  planId,
  createdAt: day1,
  closedAt: null,
  ...given,
});

export const firstMove = (batchId: string, placeId: string): MoveFact => ({
  id: newId(),
  batchId,
  placeId,
  at: null,
});

export const coat = (batchId: string, given: Partial<CoatFact> = {}): CoatFact => ({
  id: newId(),
  batchId,
  coat: 0,
  begunAt: null,
  finishedAt: day1 + 2 * hourMs,
  mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 },
  faces: ['face'],
  usedL: 2.5,
  colour: 'Red ochre',
  tin: null,
  ...given,
});

export const touchTest = (of: CoatFact, given: Partial<TouchTestFact> = {}): TouchTestFact => ({
  id: newId(),
  batchId: of.batchId,
  coatId: of.id,
  at: day1 + 30 * hourMs,
  gate: 'turn',
  passed: true,
  on: 'board',
  ...given,
});

export const ragsNotice = (subject: string, raisedAt: number): NoticeFact => ({
  id: newId(),
  kind: 'rags',
  subject,
  text: 'Lay them out flat.',
  raisedAt,
  seenAt: null,
  clearedAt: null,
  repeats: 0,
  repeatedAt: null,
});

export const reading = (
  sensor: string,
  at: number,
  raw: number,
  quantity: Quantity = 'air-temperature',
  flags = 0,
): IncomingReading => ({ sensor, quantity, at, raw, flags });

export const group = (...readings: IncomingReading[]): ReadingGroup => ({
  readings,
  refused: [],
  arrivedAt: day1,
});

/** A batch at a room, recorded; the least that a coat needs. */
export async function recordBatch(write: Verbs): Promise<{ batch: BatchFact; room: PlaceFact }> {
  const room = place();
  await write.createPlace(room);
  const itsPlan = plan();
  await write.createPlan(itsPlan);
  const made = batch(itsPlan.id);
  await write.createBatch(made, firstMove(made.id, room.id));
  return { batch: made, room };
}
