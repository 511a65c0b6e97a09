import { isDeepStrictEqual } from 'node:util';
import { SqliteError } from 'better-sqlite3';
import { BoardcureError } from '../contract/problem.ts';
import type { ChangeTable } from './changes.ts';

/** Writes a fact once: the same again changes nothing, another one under its id is refused. */
export type RecordOnce = <T extends { id: string }>(
  subject: string,
  existing: readonly T[],
  fact: T,
  recordedAt: number,
  insert: (fact: T) => void,
) => boolean;

/** @returns how to write a fact once; it answers true when the fact was new */
export function recordOnce(changes: ChangeTable): RecordOnce {
  return (subject, existing, fact, recordedAt, insert) => {
    const known = existing.find((other) => other.id === fact.id);
    if (known) {
      if (sameFact(known, fact)) return false;
      throw idTaken(subject, fact.id);
    }
    try {
      insert(fact);
    } catch (cause) {
      // One that was taken back keeps its id, though it is no longer listed.
      if (cause instanceof SqliteError && cause.code === 'SQLITE_CONSTRAINT_PRIMARYKEY') {
        throw idTaken(subject, fact.id);
      }
      throw cause;
    }
    changes.note(recordedAt, subject, fact.id, 'created');
    return true;
  };
}

export function idTaken(subject: string, id: string): BoardcureError {
  return new BoardcureError('BC_ID_TAKEN', `The id ${id} already belongs to another ${subject}.`, {
    pointer: '/id',
  });
}

/** The same fact, whenever it was recorded; what the new one leaves out says nothing. */
function sameFact<T extends object>(known: T, fact: T): boolean {
  const before = known as Record<string, unknown>;
  return Object.entries(fact).every(
    ([key, value]) =>
      key === 'createdAt' ||
      value === undefined ||
      isDeepStrictEqual(value ?? null, before[key] ?? null),
  );
}
