import type { RuleTimeFormat } from '../../daemon/contract/topic-rule.ts';
import { epochSeconds, type OwnTime, ownTime } from './own-time.ts';
import { refuse, shown } from './refusal.ts';

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
  const sent = typeof found === 'string' && number.test(found.trim()) ? Number(found) : found;
  const read = inFormat(sent, format, now);
  if (read.kind === 'refused') return read;
  const isRelative = format === 'age-s' || format === 'age-ms';
  return { kind: 'time', time: { ownAt: read.at, isRelative } };
}

function inFormat(sent: unknown, format: RuleTimeFormat, now: number): OwnTime {
  if (format === 'any') return ownTime(sent);
  if (format === 'iso') {
    return typeof sent === 'string'
      ? ownTime(sent)
      : refused(`The time is ${shown(sent)}; the rule expects ISO 8601 text.`);
  }
  if (typeof sent !== 'number') {
    return refused(`The time is ${shown(sent)}; the rule expects a number (${words[format]}).`);
  }
  if (format === 'epoch-s') return epochSeconds(sent);
  if (format === 'epoch-ms') return epochSeconds(sent / 1000);
  const ageMs = format === 'age-s' ? sent * 1000 : sent;
  if (!(ageMs >= 0 && ageMs <= longestAgeMs)) {
    return refused(
      `The age is ${sent}; it must be from 0 to ${longestAgeMs / (format === 'age-s' ? 1000 : 1)} (${words[format]}). Is it a time since 1970?`,
    );
  }
  return epochSeconds((now - ageMs) / 1000);
}

const words: Record<Exclude<RuleTimeFormat, 'any' | 'iso'>, string> = {
  'epoch-s': 'seconds since 1970',
  'epoch-ms': 'milliseconds since 1970',
  'age-s': 'seconds before it was sent',
  'age-ms': 'milliseconds before it was sent',
};

function refused(detail: string): OwnTime {
  return refuse({ code: 'time-not-understood', detail });
}
