import type { Sentence } from '../../contract/sentence.ts';
import { sentence } from '../../wording/english.ts';
import { MANY_HOURS, MANY_MINUTES } from '../../wording/fault-phrases.ts';
import { inner } from '../../wording/sentence.ts';
import type { FaultFact, SensorFact } from '../sensor-facts.ts';

const minuteMs = 60_000;

/** A fault as a sentence: who, what, since when, and what it does. */
export function faultReason(
  fault: FaultFact,
  sensor: Pick<SensorFact, 'id' | 'name'> | undefined,
  now: number,
): Sentence {
  return sentence(`sensor-${fault.kind}`, {
    sensor: sensor?.name ?? sensor?.id ?? 'unknown',
    forMinutes: roughMinutes(now - fault.fromAt),
    seen: inner(seenOf(fault)),
  });
}

/** What was seen of a fault; of one that was kept before sentences were, the text alone. */
export const seenOf = ({ kind, says, told }: FaultFact): Sentence =>
  told ? { ...told, text: says } : { code: kind, text: says };

/** As finely as it is told, so that a reply does not change with every second. */
function roughMinutes(ms: number): number {
  const minutes = ms / minuteMs;
  if (minutes < MANY_MINUTES) return Math.max(1, Math.round(minutes));
  const hours = minutes / 60;
  return hours < MANY_HOURS ? Math.round(hours) * 60 : Math.round(hours / 24) * 24 * 60;
}
