import type { PlaceChange } from '../../daemon/contract/place.ts';

/** What the form for a place shows. */
export interface PlaceFields {
  readonly name: string;
  readonly volumeM3: number | null;
  readonly capacityM: number | null;
  readonly capacityBoards: number | null;
}

/**
 * What to send of a form that was open while somebody else may have changed the same place: only what
 * was typed here, so that the other’s change of another field stays.
 *
 * @param opened - what the form began with
 * @param now - what is there now
 * @param typed - what stands in the form; a field that it does not show is left out
 * @returns the change, and the fields that both changed, differently
 */
export function placeChange(
  opened: PlaceFields,
  now: PlaceFields,
  typed: Partial<PlaceFields>,
): { body: PlaceChange; both: (keyof PlaceFields)[] } {
  const mine = (Object.keys(typed) as (keyof PlaceFields)[]).filter(
    (field) => !Object.is(typed[field], opened[field]),
  );
  return {
    body: Object.fromEntries(mine.map((field) => [field, typed[field]])),
    both: mine.filter(
      (field) => now[field] !== opened[field] && !Object.is(now[field], typed[field]),
    ),
  };
}
