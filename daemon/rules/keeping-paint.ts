import type { Mixture } from '../contract/plan.ts';

/**
 * How to keep what is left of a mixture. Common practice, no source; the maker’s sheet comes first.
 */
export function keepingWords(mixture: Mixture): string {
  const words = [
    'Pour what is left into a small tin, so that little air stays with it, lay a disc of plastic film on it and close the lid; write mixture, colour and date on it.',
    'Lift a skin off before use, never stir it in.',
  ];
  if (mixture.rawLinseedOil > 0 || mixture.turpentine > 0) {
    words.push('A thinned mixture settles: stir it from the bottom, and use it for the same coat.');
  }
  if (mixture.turpentine > 0) {
    words.push('Keep it closed and cool, away from flame and heaters, locked up from children.');
  }
  words.push('Leftover paint, oil and turpentine are hazardous waste: never down a drain.');
  return words.join(' ');
}
