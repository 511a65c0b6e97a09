import type { Database } from 'better-sqlite3';

/** The numbered list of all changes of a site but its readings. */
export function changeTable(db: Database) {
  const insert = db.prepare(
    'insert into change (at, subject, subject_id, what) values (?, ?, ?, ?)',
  );
  return {
    note(at: number, subject: string, subjectId: string, what: string): void {
      insert.run(at, subject, subjectId, what);
    },
  };
}
export type ChangeTable = ReturnType<typeof changeTable>;
