import type { Batch } from '../../daemon/contract/batch.ts';
import type { Tin } from '../../daemon/contract/tin.ts';

/** The coat of the plan that goes on next, from 0; the last one when all are on. */
export function nextCoat(batch: Pick<Batch, 'plan' | 'coats'>): number {
  const last = Math.max(-1, ...batch.coats.map(({ coat }) => coat));
  return Math.min(batch.plan.coats.length - 1, last + 1);
}

/**
 * The tin that is most likely open at the bench: the one of the batch’s last coat, as long as there
 * is something in it; or the only one there is.
 *
 * @param tins - those that are not empty
 */
export function likelyTin(
  batch: Pick<Batch, 'coats'>,
  tins: readonly Pick<Tin, 'id'>[],
): string | null {
  const used = batch.coats.map(({ tinId }) => tinId).filter((id) => id !== null);
  const last = used.at(-1);
  if (tins.some(({ id }) => id === last)) return last ?? null;
  return tins.length === 1 ? (tins[0]?.id ?? null) : null;
}
