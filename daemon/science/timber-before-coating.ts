import { within } from './argument-range.ts';
import { type BoardAir, estimatedBoardMoisture } from './board-moisture.ts';
import type { TemperatureOutlook } from './temperature-outlook.ts';

/** Most moisture at the surface for coating, % of oven-dry mass. **Source:** Swedish Wood, TräGuiden (16 % at the surface); others say 15. */
export const MOST_MOISTURE_PERCENT = 16;

/** Whether timber is dry enough to be coated. */
export type TimberCheck =
  | { readonly kind: 'unknown'; readonly because: 'no-figures' }
  | {
      readonly kind: 'dry-enough' | 'too-damp';
      /** the dampest figure, % of oven-dry mass */
      readonly worstPercent: number;
      readonly limitPercent: number;
    };

const MS_PER_HOUR = 3_600_000;

/**
 * Judges timber by the dampest of its measured figures.
 *
 * @param figuresPercent - readings at the surface, % of oven-dry mass, 0 to 200; may be empty
 * @param limitPercent - most that is allowed, 1 to 40 %, default 16
 * @returns the judgement; without figures it is unknown, never dry enough
 * @throws RangeError outside the range
 */
export function timberBeforeCoating(
  figuresPercent: readonly number[],
  limitPercent: number = MOST_MOISTURE_PERCENT,
): TimberCheck {
  within('limitPercent', limitPercent, 1, 40);
  if (figuresPercent.length === 0) return { kind: 'unknown', because: 'no-figures' };
  const worstPercent = figuresPercent.reduce(
    (worst, figure) => Math.max(worst, within('figuresPercent', figure, 0, 200)),
    0,
  );
  const kind = worstPercent <= limitPercent ? 'dry-enough' : 'too-damp';
  return { kind, worstPercent, limitPercent };
}

/**
 * Estimate of when boards will have dried to a limit in the air that is expected.
 *
 * @param startPercent - moisture now, % of oven-dry mass, 0 to 40
 * @param outlook - the coming hours, with humidity
 * @param lagHours - see `estimatedBoardLagHours`, above 0
 * @param limitPercent - 1 to 40 %, default 16
 * @returns UTC epoch ms; null where it is not reached within the outlook or humidity is unknown; an
 *   estimate of the board's mean, right within a factor of about two; measure before coating
 * @throws RangeError outside the range
 */
export function estimatedDryEnoughAt(
  startPercent: number,
  outlook: TemperatureOutlook,
  lagHours: number,
  limitPercent: number = MOST_MOISTURE_PERCENT,
): number | null {
  within('startPercent', startPercent, 0, 40);
  within('limitPercent', limitPercent, 1, 40);
  const { fromAt, tempC, rhPercent } = outlook;
  if (startPercent <= limitPercent) return fromAt;
  if (rhPercent === null) return null;
  const air = (hour: number): BoardAir => ({
    at: fromAt + hour * MS_PER_HOUR,
    tempC: tempC[Math.max(0, hour - 1)] as number,
    rhPercent: rhPercent[Math.max(0, hour - 1)] as number,
  });
  let moisture = startPercent;
  for (let hour = 1; hour <= tempC.length; hour++) {
    moisture = estimatedBoardMoisture(moisture, [air(hour - 1), air(hour)], lagHours);
    if (moisture <= limitPercent) return air(hour).at;
  }
  return null;
}
