import { estimatedWarmingHours, laggingBoards } from '../science/board-warming.ts';
import { dewMargin } from '../science/dew-margin.ts';
import type { PlaceFact } from './facts.ts';

/** The air of one hour at a place. */
export interface HourOfAir {
  at: number;
  tempC: number;
  rhPercent: number;
  /** Measured temperature of the boards; null where nothing measures it. */
  surfaceTempC: number | null;
}

/**
 * How much colder than the air boards get under the open night sky, K. Assumption; under a roof or
 * eaves they do not.
 */
const skyCoolingK = 2;
/** Below this margin water stands on the boards, K. **Source:** meaning of the dew point. */
const condenses = 0;

/**
 * Hours in which dew may have fallen on boards: where they were colder than the dew point of the air.
 * Boards follow the air with a lag, so that warm damp air in the morning wets cold boards.
 *
 * @param hours - ascending by `at`, an hour apart
 * @returns the hours concerned; empty for a dry night
 */
export function dewHours(
  hours: readonly HourOfAir[],
  place: Pick<PlaceFact, 'kind' | 'exposure'>,
  thicknessMm: number,
): HourOfAir[] {
  if (hours.length === 0) return [];
  const openFaces = place.kind === 'wall' ? 1 : 2;
  const lagHours = estimatedWarmingHours({ thicknessMm: Math.min(300, thicknessMm), openFaces });
  const air = hours.map(({ tempC }) => tempC);
  const start = air[0] as number;
  const boards = laggingBoards(
    air.map(() => start),
    air,
    lagHours,
  );
  const underSky =
    place.kind === 'outdoors' || (place.kind === 'wall' && place.exposure === 'open');
  const cooling = underSky ? skyCoolingK : 0;
  return hours.filter(({ tempC, rhPercent, surfaceTempC }, i) => {
    const boardC = surfaceTempC ?? (boards[i] as number) - cooling;
    return dewMargin(boardC, { tempC, rhPercent }) < condenses;
  });
}

/** How long a coat is so soft that dew marks it, h after the last board. Common practice, no source. */
export const marksWhileWetHours = 72;
