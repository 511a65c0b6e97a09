import type { RuleTimeFormat } from '../../daemon/contract/topic-rule.ts';
import { epochSeconds, type OwnTime, ownTime } from './own-time.ts';
import { because, type Refusal, refuse, sent } from './refusal.ts';

/** Longer than this ago is no age but a time since 1970, ms: about a year. Assumption. */
const longestAgeMs = 400 * 86_400_000;
const number = /^[+-]?\d{1,16}(?:\.\d{1,9})?$/;

export type RuleTime = { readonly ownAt: number | null; readonly isRelative: boolean };

/**
 * The time that a message gives itself, in the form that its rule says.
 *
 * @param found what stood where the rule looks: text or number; undefined and null for nothing
 * @param now arrival, epoch ms, from which ages are counted back
 * @returns epoch ms
 */
export function timeByRule(
  found: unknown,
  format: RuleTimeFormat,
  now: number,
): { readonly kind: 'time'; readonly time: RuleTime } | Extract<OwnTime, { kind: 'refused' }> {
  if (found === undefined || found === null || found === '') {
    return { kind: 'time', time: { ownAt: null, isRelative: false } };
  }
  // Many devices put every number in quotation marks.
  const meant = typeof found === 'string' && number.test(found.trim()) ? Number(found) : found;
  const read = inFormat(meant, format, now);
  if (read.kind === 'refused') return read;
  const isRelative = format === 'age-s' || format === 'age-ms';
  return { kind: 'time', time: { ownAt: read.at, isRelative } };
}

function inFormat(found: unknown, format: RuleTimeFormat, now: number): OwnTime {
  if (format === 'any') return ownTime(found);
  if (format === 'iso') {
    return typeof found === 'string'
      ? ownTime(found)
      : refused(because('time-unlike/iso', { sent: sent(found) }));
  }
  if (typeof found !== 'number') {
    return refused(because('time-unlike/number', { sent: sent(found), format }));
  }
  if (format === 'epoch-s') return epochSeconds(found);
  if (format === 'epoch-ms') return epochSeconds(found / 1000);
  const ageMs = format === 'age-s' ? found * 1000 : found;
  if (!(ageMs >= 0 && ageMs <= longestAgeMs)) {
    const mostAge = longestAgeMs / (format === 'age-s' ? 1000 : 1);
    return refused(because('time-age', { word: String(found), mostAge, format }));
  }
  return epochSeconds((now - ageMs) / 1000);
}

function refused(why: Pick<Refusal, 'detail' | 'said'>): OwnTime {
  return refuse({ code: 'time-not-understood', ...why });
}
