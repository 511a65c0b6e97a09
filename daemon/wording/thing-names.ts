import type { Species } from '../contract/batch.ts';
import type { MixturePart } from '../contract/mixture.ts';
import type { Place, PlaceKind } from '../contract/place.ts';
import type { Surface } from '../contract/plan.ts';
import type { Quantity } from '../contract/quantity.ts';

/**
 * What the things of the trade are called in one language, as they stand within a sentence. The
 * daemon’s sentences and the pages take them from here.
 */
export interface ThingNames {
  readonly placeKinds: Readonly<Record<PlaceKind, string>>;
  /** Which way a wall looks. */
  readonly facings: Readonly<Record<NonNullable<Place['facing']>, string>>;
  readonly species: Readonly<Record<Species, string>>;
  readonly surfaces: Readonly<Record<Surface, string>>;
  /** What goes into a pot, after its parts: “35 paint : 50 raw linseed oil : 15 turpentine”. */
  readonly mixtureParts: Readonly<Record<MixturePart, string>>;
  /** “15.2 °C air temperature of node-3” */
  readonly quantities: Readonly<Record<Quantity, string>>;
}
