import type { Gate } from '../contract/gate.ts';
import type { PlaceKind } from '../contract/place.ts';
import type { Sentence } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { TimberFact } from './trade-facts.ts';

/**
 * Where to put the thumb, the witness offcut first: it may be spoilt. Common practice, no source.
 */
export function touchPlaces(gate: Gate, kind: PlaceKind, timber: TimberFact): Sentence[] {
  const places = [sentence('touch-offcut', {})];
  if (kind === 'wall' || kind === 'outdoors') {
    places.push(sentence('touch-low-in-shade', {}), sentence('touch-under-lap', {}));
  } else places.push(sentence('touch-bottom-shelf', {}));
  if (gate === 'sand' || gate === 'recoat') places.push(sentence('touch-fat-edge', {}));
  if (timber.knots !== 'few') places.push(sentence('touch-knot', {}));
  if (gate === 'turn' || gate === 'stack') places.push(sentence('touch-lying-side', {}));
  return places;
}
