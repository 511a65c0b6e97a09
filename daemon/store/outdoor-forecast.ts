import type { Database } from 'better-sqlite3';
import type { OutdoorForecastPoint } from '../rules/facts.ts';

const key = 'outdoor-forecast';

/** The newest weather forecast for outdoors, as somebody sent it; one replaces the other. */
export function forecastTable(db: Database) {
  const read = db.prepare<[string], { value: string }>('select value from meta where key = ?');
  const write = db.prepare('insert or replace into meta (key, value) values (?, ?)');
  return {
    newest: (): OutdoorForecastPoint[] => JSON.parse(read.get(key)?.value ?? '[]'),
    keep: (points: readonly OutdoorForecastPoint[]): void => {
      write.run(key, JSON.stringify(points));
    },
  };
}
