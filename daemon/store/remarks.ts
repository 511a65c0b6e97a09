import type { Database } from 'better-sqlite3';
import type { HandReadingFact, RemarkFact } from '../rules/facts.ts';
import { withTold, writtenTold } from './told-column.ts';

interface RemarkRow extends Omit<RemarkFact, 'automatic' | 'told'> {
  automatic: number;
  told: string | null;
}

interface HandRow {
  id: string;
  place_id: string | null;
  batch_id: string | null;
  quantity: HandReadingFact['quantity'];
  figures: string;
  at: number;
}

/** What the operator wrote down: remarks, and what a hand meter showed. */
export function remarkTable(db: Database) {
  const all = db.prepare<[], RemarkRow>(
    'select id, batch_id as batchId, at, kind, text, told, automatic from remark order by at, recorded_at',
  );
  const insert = db.prepare(
    `insert into remark (id, batch_id, at, kind, text, told, automatic, recorded_at)
     values (@id, @batchId, @at, @kind, @text, @told, @automatic, @recordedAt)`,
  );
  const hand = db.prepare<[], HandRow>('select * from hand_reading order by at, recorded_at');
  const insertHand = db.prepare(
    `insert into hand_reading (id, place_id, batch_id, quantity, figures, at, recorded_at)
     values (@id, @placeId, @batchId, @quantity, @values, @at, @recordedAt)`,
  );
  return {
    all: (): RemarkFact[] =>
      all.all().map((row) => ({
        ...withTold(row),
        automatic: row.automatic === 1,
      })),
    insert: (remark: RemarkFact, recordedAt: number): void => {
      const told = writtenTold(remark.told);
      insert.run({ ...remark, told, automatic: remark.automatic ? 1 : 0, recordedAt });
    },
    handReadings: (): HandReadingFact[] =>
      hand.all().map((row) => ({
        id: row.id,
        placeId: row.place_id,
        batchId: row.batch_id,
        quantity: row.quantity,
        values: JSON.parse(row.figures),
        at: row.at,
      })),
    insertHandReading: (reading: HandReadingFact, recordedAt: number): void => {
      insertHand.run({ ...reading, values: JSON.stringify(reading.values), recordedAt });
    },
  };
}
export type RemarkTable = ReturnType<typeof remarkTable>;
