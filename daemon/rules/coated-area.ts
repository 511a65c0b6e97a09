import type { Boards } from '../contract/batch.ts';
import type { Face, PlannedCoat } from '../contract/plan.ts';
import { boardArea } from '../science/paint.ts';

/**
 * Area that a coat covers, m²: where a cover width is planned, only that much of the face.
 *
 * @param boards - as many as were coated
 */
export function coatedArea(
  boards: Boards,
  faces: readonly Face[],
  coverWidthMm: PlannedCoat['coverWidthMm'],
): number {
  const { widthMm } = boards;
  const whole = boardArea({ ...boards, faces });
  if (coverWidthMm === null || coverWidthMm === undefined || !faces.includes('face')) return whole;
  const face = boardArea({ ...boards, faces: ['face'] });
  return whole - face * Math.max(0, 1 - coverWidthMm / widthMm);
}
