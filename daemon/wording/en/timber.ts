import type { Phrases } from '../phrase.ts';
import type { TimberSentences } from '../subject/timber.ts';

export const timber: Phrases<TimberSentences> = {
  'maybe-lead': () =>
    'Take old paint for lead paint until a test says otherwise: test first. No dry sanding, no burning off, no open scraping; keep children away and follow the local rules for lead work.',
  weathered: () =>
    'Grey timber holds paint badly: take the grey fibres off down to sound wood, let it dry, then coat. Wear a dust mask.',
  'weathered-by-now': ({ days, limitDays }, speak) =>
    `It was delivered ${days} days ago and lay bare outdoors: look whether it has gone grey. More than about ${speak.number(limitDays)} days count as weathered.`,
  wrapped: () =>
    'Timber kept wrapped sweats: open it, put it on stickers and measure its moisture before you coat.',
  'knots-not-looked': () =>
    'Look at knots and resin before the primer: scrape resin off, and wipe the spots with turpentine where the maker’s sheet allows it.',
  resin: () =>
    'Resin keeps paint from drying over it and bleeds through: scrape it off, wipe the spots, and feel on a knot when you test.',
  'on-stickers': () =>
    'On stickers the paint stays wet under each one and marks: turn the boards as soon as they may be turned.',
  'recoat-wash': ({ days }) =>
    `It has stood outdoors for ${days} days: wash it, let it dry and scuff it first. It is not too late for the next coat.`,
  'recoat-winter': () =>
    'It has stood over winter: look for mould and chalk as well. Mould is washed off and killed, chalk is washed until a dark cloth stays clean, before the next coat.',
  'tin-old': ({ tinName, months }) =>
    `The tin “${tinName}” had been open for ${months} months: driers fade with age, so the coat is given more time. Try it on an offcut first.`,
  'tin-drier-poor': ({ tinName }) =>
    `The paint in “${tinName}” is poor in driers: the coat is given more time. Try it on an offcut first.`,
};
