import type { Gate } from '../contract/gate.ts';
import type { PlaceKind } from '../contract/place.ts';

/**
 * The job a batch waits for: the next coat, else to be mounted when it still lies on a rack.
 *
 * @param coat - index of the coat that cures; null before the first
 * @param coatCount - coats in its plan
 * @returns null when no job is left to wait for
 */
export function nextJob(coat: number | null, coatCount: number, kind: PlaceKind): Gate | null {
  if (coat === null) return null;
  if (coat + 1 < coatCount) return 'recoat';
  return kind === 'rack' || kind === 'room' ? 'mount' : null;
}
