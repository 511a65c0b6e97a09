import { positive, within } from './argument-range.ts';
import { partShares } from './paint.ts';

/** A bucket that is wider at the top, or at the bottom; inner measures. */
export type TaperedPot = {
  readonly bottomDiameterMm: number;
  readonly topDiameterMm: number;
  readonly heightMm: number;
};

const MM3_PER_LITRE = 1e6;

/**
 * What a tapered pot holds to the brim.
 *
 * @param pot - inner measures, mm, above 0
 * @returns litres
 * @throws RangeError outside the range
 *
 * **Source:** geometry of a truncated cone.
 */
export function potVolume(pot: TaperedPot): number {
  const bottom = positive('bottomDiameterMm', pot.bottomDiameterMm) / 2;
  const top = positive('topDiameterMm', pot.topDiameterMm) / 2;
  const height = positive('heightMm', pot.heightMm);
  return (Math.PI * height * (bottom * bottom + bottom * top + top * top)) / 3 / MM3_PER_LITRE;
}

/**
 * What stands in a tapered pot up to a depth.
 *
 * @param depthMm - from the bottom, mm, 0 to the height
 * @returns litres
 * @throws RangeError outside the range
 *
 * **Source:** geometry of a truncated cone.
 */
export function volumeAtDepth(pot: TaperedPot, depthMm: number): number {
  const height = positive('heightMm', pot.heightMm);
  if (within('depthMm', depthMm, 0, height) === 0) return 0;
  const widening = (pot.topDiameterMm - pot.bottomDiameterMm) / height;
  const topDiameterMm = pot.bottomDiameterMm + widening * depthMm;
  return potVolume({ ...pot, topDiameterMm, heightMm: depthMm });
}

/** Depth of a volume in the pot, mm. */
function depth(pot: TaperedPot, litres: number): number {
  const bottom = pot.bottomDiameterMm / 2;
  const widening = (pot.topDiameterMm - pot.bottomDiameterMm) / 2 / pot.heightMm;
  const base = (litres * MM3_PER_LITRE) / Math.PI;
  // almost straight: the cone's own formula would cancel
  if (Math.abs(widening) < 1e-6) return base / (bottom * bottom);
  return (Math.cbrt(bottom ** 3 + 3 * widening * base) - bottom) / widening;
}

/**
 * Marks on a stick stood in a tapered pot: pour each part up to its mark, in order.
 *
 * @param pot - inner measures, mm
 * @param volumeL - to mix, L, 0 up to what the pot holds
 * @param parts - parts by volume, any scale
 * @returns mm from the bottom, one per part, cumulative
 * @throws RangeError outside the range, and when the pot is too small
 *
 * **Source:** geometry of a truncated cone.
 */
export function taperedStickMarks(
  pot: TaperedPot,
  volumeL: number,
  parts: readonly number[],
): number[] {
  within('volumeL', volumeL, 0, potVolume(pot));
  let share = 0;
  return partShares(parts).map((part) => {
    share = Math.min(1, share + part);
    return depth(pot, share * volumeL);
  });
}
