import type { Reason } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';
import type { TimberFact } from './trade-facts.ts';

const dayMs = 86_400_000;

/**
 * Before anything is done to timber that was painted before, or that nobody knows.
 * Common practice, no source; local rules on lead come first.
 */
export const leadCaution = (): Reason => sentence('maybe-lead', {});

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
    cautions.push(leadCaution());
  }
  if (isCoated) return [...cautions, ...supportCautions(support)];
  if (stateBefore === 'weathered') {
    cautions.push(sentence('weathered', {}));
  }
  if (stateBefore === 'new' && storedHow === 'bare-outdoors' && deliveredAt !== null) {
    const days = (now - deliveredAt) / dayMs;
    if (days > weatheredAfterDays) {
      cautions.push(
        sentence('weathered-by-now', { days: Math.floor(days), limitDays: weatheredAfterDays }),
      );
    }
  }
  if (storedHow === 'wrapped') {
    cautions.push(sentence('wrapped', {}));
  }
  if (knots === null || knots === 'not-looked') {
    cautions.push(sentence('knots-not-looked', {}));
  } else if (knots === 'many' || knots === 'resinous') {
    cautions.push(sentence('resin', {}));
  }
  return [...cautions, ...supportCautions(support)];
}

function supportCautions(support: TimberFact['support']): Reason[] {
  return support === 'stickers' ? [sentence('on-stickers', {})] : [];
}
