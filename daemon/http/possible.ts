import { BoardcureError } from '../contract/problem.ts';

/**
 * What is outside of physics is the asker’s fault, not the daemon’s.
 *
 * @throws BoardcureError in place of a RangeError of the reckoning
 */
export function possible<T>(reckon: () => T): T {
  try {
    return reckon();
  } catch (cause) {
    if (!(cause instanceof RangeError)) throw cause;
    throw new BoardcureError('BC_REQUEST_INVALID', `${cause.message}.`, { cause });
  }
}
