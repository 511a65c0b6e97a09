import type { Quantity } from '../../daemon/contract/quantity.ts';
import { quantityWords } from '../words/thing-words.ts';
import { figure } from './figures.ts';

const ohmSteps = [
  [1e9, 'GΩ'],
  [1e6, 'MΩ'],
  [1e3, 'kΩ'],
] as const;

/** A reading with its unit, for example “18.4 °C”; resistances as people say them, “55.4 MΩ”. */
export function measured(quantity: Quantity, value: number): string {
  const { unit } = quantityWords[quantity];
  if (quantity !== 'wood-resistance') return `${figure(value)} ${unit}`;
  const [size, word] = ohmSteps.find(([from]) => value >= from) ?? [1, unit];
  return `${figure(Number((value / size).toPrecision(3)))} ${word}`;
}
