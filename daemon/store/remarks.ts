import type { Database } from 'better-sqlite3';
import type { HandReadingFact, RemarkFact } from '../rules/facts.ts';

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
  const all = db.prepare<[], Omit<RemarkFact, 'automatic'> & { automatic: number }>(
    'select id, batch_id as batchId, at, kind, text, automatic from remark order by at, recorded_at',
  );
  const insert = db.prepare(
    `insert into remark (id, batch_id, at, kind, text, automatic, recorded_at)
     values (@id, @batchId, @at, @kind, @text, @automatic, @recordedAt)`,
  );
  const hand = db.prepare<[], HandRow>('select * from hand_reading order by at, recorded_at');
  const insertHand = db.prepare(
    `insert into hand_reading (id, place_id, batch_id, quantity, figures, at, recorded_at)
     values (@id, @placeId, @batchId, @quantity, @values, @at, @recordedAt)`,
  );
  return {
    all: (): RemarkFact[] => all.all().map((row) => ({ ...row, automatic: row.automatic === 1 })),
    insert: (remark: RemarkFact, recordedAt: number): void => {
      insert.run({ ...remark, automatic: remark.automatic ? 1 : 0, recordedAt });
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
