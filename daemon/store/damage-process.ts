import { integrityFaults } from './backup-check.ts';
import { openForReading } from './open.ts';

/** What the process that looks a database through says before it ends. */
export type DamageAnswer = { faults: string[] };

/** The process that looks a database through by night; it ends with the daemon that started it. */
function lookAndTell(): void {
  process.once('disconnect', () => process.exit(1));
  const answer: DamageAnswer = { faults: faultsOf(process.argv[2] ?? '') };
  process.send?.(answer, () => process.exit(0));
}

function faultsOf(file: string): string[] {
  try {
    const db = openForReading(file);
    try {
      return integrityFaults(db, 'full');
    } finally {
      db.close();
    }
  } catch (cause) {
    return [cause instanceof Error ? cause.message : String(cause)];
  }
}

lookAndTell();
