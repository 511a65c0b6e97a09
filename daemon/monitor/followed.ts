import type { Quantity } from '../contract/quantity.ts';
import type { Speaker } from '../rules/place-series.ts';

/** Quantities of the air that are followed at every place, and which of several sensors speaks. */
export const followed = {
  'air-temperature': 'lowest',
  'relative-humidity': 'highest',
  'carbon-dioxide': 'highest',
} as const satisfies Partial<Record<Quantity, Speaker>>;
export type Followed = keyof typeof followed;
