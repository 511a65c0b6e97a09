import type { Database } from 'better-sqlite3';
import type { CalibrationFact, KeptCalibration } from '../rules/sensor-facts.ts';
import { codeOf, quantityOf } from './quantity-code.ts';

interface CalibrationRow {
  id: string;
  sensor_key: number;
  quantity: number;
  from_at: number | null;
  how: string;
  note: string | null;
  recorded_at: number;
  superseded_at: number | null;
}

/** Calibrations of sensors, with all that they once were. */
export function calibrationTable(db: Database) {
  const standing = db.prepare<[], CalibrationRow>(
    'select * from calibration where superseded_at is null order by rank',
  );
  const all = db.prepare<[], CalibrationRow>('select * from calibration order by rank');
  const knownId = db.prepare<[string], number>('select 1 from calibration where id = ?').pluck();
  const insert = db.prepare(
    `insert into calibration (id, sensor_key, quantity, from_at, how, note, recorded_at)
     values (@id, @sensorKey, @quantity, @fromAt, @how, @note, @recordedAt)`,
  );
  const supersede = db.prepare(
    'update calibration set superseded_at = ? where id = ? and superseded_at is null',
  );
  const fact = (row: CalibrationRow): CalibrationFact => ({
    id: row.id,
    sensorKey: row.sensor_key,
    quantity: quantityOf(row.quantity),
    fromAt: row.from_at,
    how: JSON.parse(row.how) as CalibrationFact['how'],
    note: row.note,
  });
  return {
    /** Those that stand, in the order they were recorded. */
    standing: (): CalibrationFact[] => standing.all().map(fact),
    all: (): KeptCalibration[] =>
      all.all().map((row) => ({
        ...fact(row),
        recordedAt: row.recorded_at,
        supersededAt: row.superseded_at,
      })),
    isKnown: (id: string): boolean => knownId.get(id) !== undefined,
    insert: (calibration: CalibrationFact, recordedAt: number): void => {
      const { id, sensorKey, quantity, fromAt, how, note } = calibration;
      const values = { id, sensorKey, fromAt, note, recordedAt, how: JSON.stringify(how) };
      insert.run({ ...values, quantity: codeOf(quantity) });
    },
    /** @returns false when none stands under that id */
    supersede: (id: string, at: number): boolean => supersede.run(at, id).changes === 1,
  };
}
export type CalibrationTable = ReturnType<typeof calibrationTable>;
