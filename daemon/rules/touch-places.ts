import type { Gate } from '../contract/gate.ts';
import type { PlaceKind } from '../contract/place.ts';
import type { TimberFact } from './trade-facts.ts';

/**
 * Where to put the thumb, the witness offcut first: it may be spoilt. Common practice, no source.
 */
export function touchPlaces(gate: Gate, kind: PlaceKind, timber: TimberFact): string[] {
  const places = ['First on the witness offcut that was coated with these boards.'];
  if (kind === 'wall' || kind === 'outdoors') {
    places.push(
      'Then low down in the shade, where it dries last.',
      'Under a lap or an edge below.',
    );
  } else {
    places.push('Then on the bottom shelf, in the middle of the rack, where the air stands.');
  }
  if (gate === 'sand' || gate === 'recoat') places.push('On a fat edge, where paint has gathered.');
  if (timber.knots !== 'few') places.push('On a knot: paint over resin dries last.');
  if (gate === 'turn' || gate === 'stack') {
    places.push('On the side that will lie on the next board.');
  }
  return places;
}
