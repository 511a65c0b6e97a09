import type { Problem } from '../../daemon/contract/problem.ts';
import { type Entry, momentKeys } from './entry.ts';

/** A member of a refused entry’s body that can be corrected by hand. */
export interface Correctable {
  readonly key: string;
  readonly kind: 'moment' | 'number' | 'text';
  readonly value: string;
}

/**
 * What can be corrected in an entry that was refused: its times, and what was found wrong, as far as
 * a person could have typed it.
 *
 * @param names - members that the page has a word for
 */
export function correctable(
  { given: { body } }: Pick<Entry, 'given'>,
  problem: Problem,
  names: readonly string[],
): Correctable[] {
  const faulty = [problem.pointer, ...(problem.errors ?? []).map(({ pointer }) => pointer)]
    .filter((pointer) => pointer !== undefined)
    .map((pointer) => pointer.split('/')[1] ?? '');
  return names
    .filter((key) => isMoment(key) || faulty.includes(key))
    .flatMap((key): Correctable[] => {
      const value = body[key];
      if (typeof value === 'number') return [{ key, kind: 'number', value: String(value) }];
      if (typeof value !== 'string') return [];
      return [{ key, kind: isMoment(key) ? 'moment' : 'text', value }];
    });
}

const isMoment = (key: string) => (momentKeys as readonly string[]).includes(key);
