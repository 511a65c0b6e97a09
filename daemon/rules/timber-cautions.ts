import type { Reason } from '../contract/gate.ts';
import type { TimberFact } from './trade-facts.ts';

const dayMs = 86_400_000;

/**
 * Before anything is done to timber that was painted before, or that nobody knows.
 * Common practice, no source; local rules on lead come first.
 */
export const leadCaution =
  'Take old paint for lead paint until a test says otherwise: test first. No dry sanding, no burning off, no open scraping; keep children away and follow the local rules for lead work.';

/**
 * What is to be said of timber before it is coated.
 *
 * @param weatheredAfterDays - how long bare timber may lie outdoors; about two weeks is common
 *   practice (first coat within 2 weeks: Wood Handbook, chapter 16)
 */
export function timberCautions(
  timber: TimberFact,
  isCoated: boolean,
  now: number,
  weatheredAfterDays: number,
): Reason[] {
  const cautions: Reason[] = [];
  const { stateBefore, deliveredAt, storedHow, support, knots } = timber;
  if (stateBefore === 'painted' || stateBefore === 'unknown') {
    cautions.push({ code: 'maybe-lead', text: leadCaution });
  }
  if (isCoated) return [...cautions, ...supportCautions(support)];
  if (stateBefore === 'weathered') {
    cautions.push({
      code: 'weathered',
      text: 'Grey timber holds paint badly: take the grey fibres off down to sound wood, let it dry, then coat. Wear a dust mask.',
    });
  }
  if (stateBefore === 'new' && storedHow === 'bare-outdoors' && deliveredAt !== null) {
    const days = (now - deliveredAt) / dayMs;
    if (days > weatheredAfterDays) {
      cautions.push({
        code: 'weathered-by-now',
        text: `It was delivered ${Math.floor(days)} days ago and lay bare outdoors: look whether it has gone grey. More than about ${weatheredAfterDays} days count as weathered.`,
      });
    }
  }
  if (storedHow === 'wrapped') {
    cautions.push({
      code: 'wrapped',
      text: 'Timber kept wrapped sweats: open it, put it on stickers and measure its moisture before you coat.',
    });
  }
  if (knots === null || knots === 'not-looked') {
    cautions.push({
      code: 'knots-not-looked',
      text: 'Look at knots and resin before the primer: scrape resin off, and wipe the spots with turpentine where the maker’s sheet allows it.',
    });
  } else if (knots === 'many' || knots === 'resinous') {
    cautions.push({
      code: 'resin',
      text: 'Resin keeps paint from drying over it and bleeds through: scrape it off, wipe the spots, and feel on a knot when you test.',
    });
  }
  return [...cautions, ...supportCautions(support)];
}

function supportCautions(support: TimberFact['support']): Reason[] {
  if (support !== 'stickers') return [];
  return [
    {
      code: 'on-stickers',
      text: 'On stickers the paint stays wet under each one and marks: turn the boards as soon as they may be turned.',
    },
  ];
}
