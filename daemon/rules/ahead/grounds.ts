import type { Reason } from '../../contract/gate.ts';
import { sentence } from '../../wording/english.ts';
import type { WorkPace } from './batch-chain.ts';
import type { DayRate, RateGround } from './season-rate.ts';

interface GroundParts {
  rates: readonly (readonly DayRate[])[];
  /** Names of places that were never read. */
  unknownPlaces: readonly string[];
  capacityKnown: boolean;
  inParts: boolean;
  hasWall: boolean;
  settings: WorkPace;
}

const grounds: readonly RateGround[] = ['outlook', 'own-record', 'typed-months', 'last-days'];

/** What a plan rests on, and what it leaves out, in words. */
export function aheadGrounds(parts: GroundParts): Reason[] {
  const { rates, unknownPlaces, capacityKnown, inParts, hasWall, settings } = parts;
  const used = new Set(rates.flatMap((days) => days.map((day) => day.ground)));
  return [
    ...grounds.filter((ground) => used.has(ground)).map((ground) => sentence(`rate-${ground}`, {})),
    ...unknownPlaces.map((placeName) => sentence('place-unknown', { placeName })),
    ...(capacityKnown ? [] : [sentence('capacity-unknown', {})]),
    ...(inParts ? [sentence('in-parts', {})] : []),
    ...(hasWall ? [] : [sentence('no-wall', {})]),
    sentence('pace', {
      brushedM2: settings.brushM2PerHour,
      mountedBoards: settings.mountBoardsPerHour,
    }),
    sentence('paint', {}),
  ];
}
