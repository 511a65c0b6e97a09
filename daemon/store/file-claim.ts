import BetterSqlite3, { type Database } from 'better-sqlite3';

/**
 * Makes this process the only writer of a database for as long as the claim is open: a second daemon
 * on the same folder would keep its own sums beside ours. The lock is the operating system’s, so a
 * killed process leaves none; and it lies beside the database, so that who waits for it has not opened
 * the file that may be put aside meanwhile.
 *
 * @param waitMs - how long another one may take to let go
 * @returns the claim, to be closed; null when somebody else has it
 * @throws SqliteError when the lock cannot be made
 */
export function claimFile(file: string, waitMs: number): Database | null {
  const claim = new BetterSqlite3(`${file}-lock`, { timeout: waitMs });
  try {
    // Nothing is ever written to it, so that it needs no journal beside it.
    claim.pragma('journal_mode = memory');
    claim.pragma('locking_mode = exclusive');
    claim.exec('begin exclusive; commit');
    return claim;
  } catch (cause) {
    claim.close();
    const isHeld =
      cause instanceof BetterSqlite3.SqliteError && cause.code.startsWith('SQLITE_BUSY');
    if (isHeld) return null;
    throw cause;
  }
}
