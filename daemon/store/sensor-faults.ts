import type { Database } from 'better-sqlite3';
import type { FaultFact } from '../rules/sensor-facts.ts';
import { codeOf, quantityOf } from './quantity-code.ts';
import { withTold, writtenTold } from './told-column.ts';

interface FaultRow {
  id: string;
  sensor_key: number;
  quantity: number | null;
  kind: FaultFact['kind'];
  from_at: number;
  until_at: number | null;
  says: string;
  told: string | null;
}

/** Faults that were found in what sensors sent. */
export function sensorFaultTable(db: Database) {
  const all = db.prepare<[], FaultRow>('select * from sensor_fault order by from_at, rowid');
  const byId = db.prepare<[string], FaultRow>('select * from sensor_fault where id = ?');
  const insert = db.prepare(
    `insert or ignore into sensor_fault
       (id, sensor_key, quantity, kind, from_at, until_at, says, told, recorded_at)
     values (@id, @sensorKey, @quantity, @kind, @fromAt, @untilAt, @says, @told, @recordedAt)`,
  );
  const end = db.prepare('update sensor_fault set until_at = ? where id = ? and until_at is null');
  const fact = (read: FaultRow): FaultFact => {
    const row = withTold(read);
    return {
      id: row.id,
      sensorKey: row.sensor_key,
      quantity: row.quantity === null ? null : quantityOf(row.quantity),
      kind: row.kind,
      fromAt: row.from_at,
      untilAt: row.until_at,
      says: row.says,
      ...(row.told ? { told: row.told } : {}),
    };
  };
  return {
    all: (): FaultFact[] => all.all().map(fact),
    byId: (id: string): FaultFact | null => {
      const row = byId.get(id);
      return row ? fact(row) : null;
    },
    insert: (fault: FaultFact, recordedAt: number): void => {
      const quantity = fault.quantity === null ? null : codeOf(fault.quantity);
      insert.run({ ...fault, told: writtenTold(fault.told), quantity, recordedAt });
    },
    end: (id: string, untilAt: number): void => {
      end.run(untilAt, id);
    },
  };
}
export type SensorFaultTable = ReturnType<typeof sensorFaultTable>;
