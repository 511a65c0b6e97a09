import type { Tin } from '../contract/tin.ts';

/**
 * What is left in the tins of a kind, L: their volume less what coats say they took. Coats count with
 * all that was mixed, so that this is rather too little than too much.
 *
 * @returns undefined where no such tin with a known volume stands there
 */
export function leftInTins(
  tins: readonly Pick<Tin, 'kind' | 'volumeL' | 'usedL' | 'emptiedAt'>[],
  kind: Tin['kind'],
): number | undefined {
  const known = tins.flatMap((tin) =>
    tin.kind === kind && tin.emptiedAt === null && tin.volumeL !== null
      ? [Math.max(0, tin.volumeL - tin.usedL)]
      : [],
  );
  return known.length === 0 ? undefined : known.reduce((sum, litres) => sum + litres, 0);
}
