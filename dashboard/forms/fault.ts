import type { Problem } from '../../daemon/contract/problem.ts';
import type { Told } from '../reader.ts';

/**
 * What is wrong with one field, as the daemon said it.
 *
 * @param problem - the daemon’s answer; null when all is well
 * @param pointer - RFC 6901 pointer of the field, for example `/boards/count`
 * @returns the sentence, or null when this field is not at fault
 */
export function faultAt(problem: Problem | null, pointer: string): Told | null {
  if (problem === null) return null;
  const entry = problem.errors?.find((error) => isAtOrUnder(error.pointer, pointer));
  if (entry !== undefined) return told(entry);
  return problem.pointer !== undefined && isAtOrUnder(problem.pointer, pointer)
    ? told(problem)
    : null;
}

function told({ detail, detailSaid }: Pick<Problem, 'detail' | 'detailSaid'>): Told {
  return detailSaid ?? { code: 'as-written', text: detail };
}

function isAtOrUnder(pointer: string, field: string): boolean {
  return pointer === field || pointer.startsWith(`${field}/`);
}
