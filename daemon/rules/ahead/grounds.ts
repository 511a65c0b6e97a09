import type { Reason } from '../../contract/gate.ts';
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

const groundWords: Readonly<Record<RateGround, string>> = {
  outlook:
    'The coming days are carried on from what was recorded, with a weather forecast where one was sent.',
  'own-record':
    'Later days are taken from the same time of earlier years in this site’s own record.',
  'typed-months': 'Later days outdoors are taken from the monthly means in the settings.',
  'last-days':
    'Later days are taken to go on like the last fortnight, with growing doubt: the site has no record of that season yet, and no monthly means were typed.',
};

/** What a plan rests on, and what it leaves out, in words. */
export function aheadGrounds(parts: GroundParts): Reason[] {
  const { rates, unknownPlaces, capacityKnown, inParts, hasWall, settings } = parts;
  const used = new Set(rates.flatMap((days) => days.map((day) => day.ground)));
  const list: Reason[] = (Object.keys(groundWords) as RateGround[])
    .filter((ground) => used.has(ground))
    .map((ground) => ({ code: `rate-${ground}`, text: groundWords[ground] }));
  const say = (code: string, text: string) => list.push({ code, text });
  for (const name of unknownPlaces) {
    say(
      'place-unknown',
      `Nothing is known of the air at ${name}: what is planned there has no times.`,
    );
  }
  if (!capacityKnown) {
    say(
      'capacity-unknown',
      'How much the racks hold was not said for each of them, so the plan does not heed it.',
    );
  }
  if (inParts)
    say('in-parts', 'A batch larger than the racks is planned in parts, one after the other.');
  if (!hasWall) say('no-wall', 'The site has no wall, so all coats are planned on the racks.');
  say(
    'pace',
    `Hands are taken to brush ${settings.brushM2PerHour} m² and to put up ${settings.mountBoardsPerHour} boards an hour, one thing at a time (common practice, no source; settings).`,
  );
  say(
    'paint',
    'Early and late hold the doubt about the paint and about the weather; breakdowns, rain and visitors are not in them.',
  );
  return list;
}
