import { positive, within } from './argument-range.ts';

/** A side of a board that can be coated. */
export type BoardFace = 'face' | 'back' | 'edges' | 'ends';

/** Volumes to mix for an area. */
export type Mixture = {
  /** volume to mix in all, L */
  readonly totalL: number;
  /** volume of each part in the order given, L */
  readonly partsL: number[];
};

const MM3_PER_LITRE = 1e6;

/**
 * Parts by volume as shares that add to 1.
 *
 * @param parts - any scale, each 0 or more, at least one above 0
 * @returns one share per part
 * @throws RangeError on an empty list, a negative part or nothing but zeros
 */
export function partShares(parts: readonly number[]): number[] {
  if (parts.length === 0) throw new RangeError('parts is empty; allowed: at least one part');
  parts.forEach((part, index) => {
    within(`parts[${index}]`, part, 0, 1e9);
  });
  const sum = parts.reduce((total, part) => total + part, 0);
  if (!(sum > 0)) {
    throw new RangeError(`parts is ${parts.join(' : ')}; allowed: at least one part above 0`);
  }
  return parts.map((part) => part / sum);
}

/**
 * Volume to mix for an area, and how much of each part.
 *
 * @param input - `areaM2` 0 or more; `spreadingM2PerL` above 0, of the mixed paint; `parts` by volume,
 *   any scale (35 : 50 : 15); `lossPercent` share of what is mixed that stays in pot and brush, 0 to
 *   below 100, default 0
 * @returns litres in all and per part
 * @throws RangeError outside the range
 *
 * **Source:** volume = area / spreading rate / (1 − loss), common practice, no source. Volumes are
 * taken to add up; the shrinkage on mixing oil and turpentine is far below the error of a stick mark.
 */
export function mixture(input: {
  readonly areaM2: number;
  readonly spreadingM2PerL: number;
  readonly parts: readonly number[];
  readonly lossPercent?: number | undefined;
}): Mixture {
  within('areaM2', input.areaM2, 0, 1e9);
  positive('spreadingM2PerL', input.spreadingM2PerL);
  const lossPercent = within('lossPercent', input.lossPercent ?? 0, 0, 99);
  const totalL = input.areaM2 / input.spreadingM2PerL / (1 - lossPercent / 100);
  return { totalL, partsL: partShares(input.parts).map((share) => share * totalL) };
}

/**
 * Thickness of the wet film at a spreading rate, on a surface that takes up nothing.
 *
 * @param spreadingM2PerL - area covered by a litre, m²/L, above 0
 * @returns µm; on sawn or unprimed wood part of it sinks in, so this is not a film there
 * @throws RangeError when not above 0
 *
 * **Source:** geometry: 1 L on 10 m² is 100 µm.
 */
export function wetFilmThickness(spreadingM2PerL: number): number {
  return 1000 / positive('spreadingM2PerL', spreadingM2PerL);
}

/**
 * Thickness of the film once the solvent has left.
 *
 * @param wetFilmUm - wet film, µm, 0 or more
 * @param volumeSolidsPercent - share of the volume that stays, 0 to 100 %
 * @returns µm
 * @throws RangeError outside the range
 *
 * **Source:** ISO 2808 relation of wet and dry film thickness, as quoted in a technical note.
 */
export function dryFilmThickness(wetFilmUm: number, volumeSolidsPercent: number): number {
  within('wetFilmUm', wetFilmUm, 0, 1e6);
  return (wetFilmUm * within('volumeSolidsPercent', volumeSolidsPercent, 0, 100)) / 100;
}

/**
 * Marks on a stick stood in a straight-sided pot: pour each part up to its mark, in order.
 *
 * @param input - `potDiameterMm` inner diameter, mm; `volumeL` to mix, L; `parts` by volume
 * @returns mm from the bottom, one per part, cumulative; a part of 0 repeats the mark before it
 * @throws RangeError outside the range
 *
 * **Source:** geometry of a cylinder.
 */
export function stickMarks(input: {
  readonly potDiameterMm: number;
  readonly volumeL: number;
  readonly parts: readonly number[];
}): number[] {
  const radiusMm = positive('potDiameterMm', input.potDiameterMm) / 2;
  within('volumeL', input.volumeL, 0, 1e6);
  const fullMm = (input.volumeL * MM3_PER_LITRE) / (Math.PI * radiusMm * radiusMm);
  let share = 0;
  return partShares(input.parts).map((part) => {
    share += part;
    return share * fullMm;
  });
}

/**
 * Area of the named sides of a stack of equal boards.
 *
 * @param input - `count` whole number of boards, 0 or more; lengths in mm, above 0; `faces` which
 *   sides count, each once: `face` and `back` are length × width, `edges` both long edges, `ends`
 *   both end grains
 * @returns m²
 * @throws RangeError outside the range
 *
 * **Source:** geometry; a sawn face takes more paint than its area says.
 */
export function boardArea(input: {
  readonly count: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly faces: readonly BoardFace[];
}): number {
  const { lengthMm: length, widthMm: width, thicknessMm: thickness } = input;
  if (!Number.isInteger(input.count) || input.count < 0) {
    throw new RangeError(`count is ${input.count}; allowed: whole numbers from 0`);
  }
  positive('lengthMm', length);
  positive('widthMm', width);
  positive('thicknessMm', thickness);
  const areaMm2: Record<BoardFace, number> = {
    face: length * width,
    back: length * width,
    edges: 2 * length * thickness,
    ends: 2 * width * thickness,
  };
  let sumMm2 = 0;
  for (const face of new Set(input.faces)) {
    if (!Object.hasOwn(areaMm2, face)) {
      throw new RangeError(`faces has ${face}; allowed: ${Object.keys(areaMm2).join(', ')}`);
    }
    sumMm2 += areaMm2[face];
  }
  return (input.count * sumMm2) / 1e6;
}
