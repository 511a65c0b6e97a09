import type { Quantity } from '../contract/quantity.ts';

/** The number a quantity is stored under; never changed and never reused. */
const codes: Record<Quantity, number> = {
  'air-temperature': 1,
  'relative-humidity': 2,
  'surface-temperature': 3,
  'wood-moisture': 4,
  'wood-resistance': 5,
  'carbon-dioxide': 6,
  battery: 7,
};

const quantities = new Map(
  Object.entries(codes).map(([quantity, code]) => [code, quantity as Quantity]),
);

export const codeOf = (quantity: Quantity): number => codes[quantity];

export function quantityOf(code: number): Quantity {
  const quantity = quantities.get(code);
  if (!quantity) throw new Error(`The database holds quantity ${code}, which is not known here.`);
  return quantity;
}
