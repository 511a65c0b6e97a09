/** What was looked at. */
export type Subject =
  | 'settings'
  | 'versions'
  | 'folder'
  | 'disk'
  | 'database'
  | 'sensors'
  | 'backups'
  | 'clock'
  | 'pages'
  | 'broker';

/** How a thing was found: in order, worth a look, or wrong. */
export type Level = 'ok' | 'look' | 'wrong';

/** One line of the report. */
export interface Finding {
  readonly about: Subject;
  readonly level: Level;
  /** What was found, and what it means. */
  readonly says: string;
  /** What to do; null where nothing needs doing. */
  readonly doThis: string | null;
}

/** A thing in order. */
export const ok = (about: Subject, says: string): Finding => ({
  about,
  level: 'ok',
  says,
  doThis: null,
});

/** A thing that works and still deserves a look. */
export const look = (about: Subject, says: string, doThis: string): Finding => ({
  about,
  level: 'look',
  says,
  doThis,
});

/** A thing that keeps the daemon from its work. */
export const wrong = (about: Subject, says: string, doThis: string): Finding => ({
  about,
  level: 'wrong',
  says,
  doThis,
});

/** A number of bytes for people, in powers of ten. */
export function sizeWords(bytes: number): string {
  if (bytes >= 1e9) return `${(bytes / 1e9).toFixed(1)} GB`;
  if (bytes >= 1e6) return `${Math.round(bytes / 1e6)} MB`;
  return `${Math.round(bytes / 1e3)} kB`;
}

/** A span of time for people; only the unit that matters. */
export function spanWords(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  if (minutes < 120) return `${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 72 ? `${hours} h` : `${Math.round(hours / 24)} days`;
}
