import type { Reason } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';
import type { PlaceFact } from './facts.ts';

/** When the sun stands on a wall, hours of the local day; rough, from the facing alone. */
interface SunnyHours {
  fromHour: number;
  toHour: number;
}

/**
 * Hours in which the sun may stand on a wall, north of the tropics: east in the morning, south around
 * noon, west in the afternoon, north early and late in summer. South of the equator north and south
 * change places.
 * **Source:** geometry of the sun’s daily round, an hour or two rough; trees and houses are not known.
 */
const sunnyHours: Readonly<Record<NonNullable<PlaceFact['facing']>, readonly SunnyHours[]>> = {
  east: [{ fromHour: 5, toHour: 13 }],
  south: [{ fromHour: 9, toHour: 18 }],
  west: [{ fromHour: 13, toHour: 21 }],
  north: [
    { fromHour: 4, toHour: 8 },
    { fromHour: 19, toHour: 22 },
  ],
};

/** From this local hour the dew of the evening is near. Common practice, no source. */
const eveningHour = 17;

export type Hemisphere = 'north' | 'south';

function sunTimes(facing: NonNullable<PlaceFact['facing']>, hemisphere: Hemisphere) {
  const turned = { north: 'south', south: 'north', east: 'east', west: 'west' } as const;
  return sunnyHours[hemisphere === 'north' ? facing : turned[facing]];
}

/**
 * Whether the sun may stand on a wall now, were it to shine; null where the wall’s facing is unknown.
 *
 * @param localHour - hour of the local day, 0 to 24
 */
export function sunMayBeOn(
  wall: Pick<PlaceFact, 'facing' | 'exposure'>,
  localHour: number,
  hemisphere: Hemisphere = 'north',
): boolean | null {
  if (wall.exposure === 'shade') return false;
  if (wall.facing === null) return null;
  return sunTimes(wall.facing, hemisphere).some(
    ({ fromHour, toHour }) => localHour >= fromHour && localHour < toHour,
  );
}

/**
 * What to mind when a coat goes on at a wall: follow the shade, stop before the dew of the evening.
 * They do not forbid: nobody measures whether the sun shines. Common practice, no source.
 */
export function wallReasons(
  wall: Pick<PlaceFact, 'name' | 'facing' | 'exposure'>,
  localHour: number,
  hemisphere: Hemisphere = 'north',
): Reason[] {
  const reasons: Reason[] = [];
  const sunny = sunMayBeOn(wall, localHour, hemisphere);
  if (sunny === true && wall.facing !== null) {
    const until = sunTimes(wall.facing, hemisphere).find(({ toHour }) => localHour < toHour);
    reasons.push(sentence('wall-sun', { untilHour: until?.toHour ?? 24 }));
  } else if (sunny === null) reasons.push(sentence('wall-shade/facing-unknown', {}));
  else if (wall.exposure !== 'shade') reasons.push(sentence('wall-shade', {}));
  reasons.push(sentence(localHour >= eveningHour ? 'wall-evening/late' : 'wall-evening', {}));
  if (wall.exposure === 'open') reasons.push(sentence('wall-rain', {}));
  return reasons;
}
