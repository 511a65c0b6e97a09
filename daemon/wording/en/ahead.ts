import type { Phrases } from '../phrase.ts';
import type { AheadSentences } from '../subject/ahead.ts';

export const ahead: Phrases<AheadSentences> = {
  'rate-outlook': () =>
    'The coming days are carried on from what was recorded, with a weather forecast where one was sent.',
  'rate-own-record': () =>
    'Later days are taken from the same time of earlier years in this site’s own record.',
  'rate-typed-months': () =>
    'Later days outdoors are taken from the monthly means in the settings.',
  'rate-last-days': () =>
    'Later days are taken to go on like the last fortnight, with growing doubt: the site has no record of that season yet, and no monthly means were typed.',
  'place-unknown': ({ placeName }) =>
    `Nothing is known of the air at ${placeName}: what is planned there has no times.`,
  'capacity-unknown': () =>
    'How much the racks hold was not said for each of them, so the plan does not heed it.',
  'in-parts': () => 'A batch larger than the racks is planned in parts, one after the other.',
  'no-wall': () => 'The site has no wall, so all coats are planned on the racks.',
  pace: ({ brushedM2, mountedBoards }, speak) =>
    `Hands are taken to brush ${speak.area(brushedM2)} and to put up ${speak.number(mountedBoards)} boards an hour, one thing at a time (common practice, no source; settings).`,
  paint: () =>
    'Early and late hold the doubt about the paint and about the weather; breakdowns, rain and visitors are not in them.',
};
