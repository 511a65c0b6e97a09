import type { Database } from 'better-sqlite3';

/** What the site is called on its pages, with what it was called before. */
export function siteNameTable(db: Database) {
  const newest = db.prepare<[], { name: string | null }>(
    'select name from site_name order by rank desc limit 1',
  );
  const insert = db.prepare('insert into site_name (name, recorded_at) values (?, ?)');
  return {
    newest: (): string | null => newest.get()?.name ?? null,
    insert: (name: string | null, recordedAt: number): void => {
      insert.run(name, recordedAt);
    },
  };
}
export type SiteNameTable = ReturnType<typeof siteNameTable>;
