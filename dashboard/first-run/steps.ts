import type { Session } from '../../daemon/contract/access.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';

/** The screens of the first run, in their order. */
export const firstRunSteps = [
  'reader',
  'access',
  'site',
  'room',
  'rack',
  'sensor',
  'batch',
  'coat',
  'verdict',
] as const;
export type FirstRunStep = (typeof firstRunSteps)[number];

/** What the daemon has already: all that the first run goes by. */
export interface FirstRunState {
  readonly session: Pick<Session, 'pinSet'>;
  readonly overview: Pick<Overview, 'siteName' | 'places'>;
  readonly sensors: readonly Pick<Sensor, 'placeId'>[];
}

/** Whether what a screen asks for is there; of the reader’s own device nothing is known to the daemon. */
function isDone(step: FirstRunStep, { session, overview, sensors }: FirstRunState): boolean {
  const { places } = overview;
  const batches = places.flatMap((place) => place.batches);
  switch (step) {
    case 'access':
      return session.pinSet;
    case 'site':
      return overview.siteName !== null;
    case 'room':
      return places.length > 0;
    case 'rack':
      return places.some(({ kind }) => kind !== 'room');
    case 'sensor':
      return sensors.some(({ placeId }) => placeId !== null);
    case 'batch':
      return batches.length > 0;
    case 'coat':
      return batches.some(({ coat }) => coat !== null);
    default:
      return false;
  }
}

/**
 * Where somebody who comes back goes on: after the last thing that is done, since what was passed over
 * before it was passed over on purpose.
 */
export function stepToGoOn(state: FirstRunState): FirstRunStep {
  const done = firstRunSteps.filter((step) => isDone(step, state));
  const last = done[done.length - 1];
  return last === undefined ? 'reader' : (neighbour(last, 1) ?? 'verdict');
}

/** The screen before or after one; null beyond the ends. */
export function neighbour(step: FirstRunStep, by: -1 | 1): FirstRunStep | null {
  return firstRunSteps[firstRunSteps.indexOf(step) + by] ?? null;
}
