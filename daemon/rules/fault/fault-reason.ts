import type { Reason } from '../../contract/gate.ts';
import type { FaultFact, SensorFact } from '../facts.ts';
import { faultWords } from './fault-words.ts';

const hourMs = 3_600_000;

/** A fault as a sentence: who, what, since when, and what it does. */
export function faultReason(
  fault: FaultFact,
  sensor: Pick<SensorFact, 'id' | 'name'> | undefined,
  now: number,
): Reason {
  const { name, effect } = faultWords[fault.kind];
  const who = sensor?.name ?? sensor?.id ?? 'unknown';
  const does = {
    'not-counted': ' Its readings are not counted since.',
    'humidity-not-counted': ' Its humidity is not counted since.',
    none: '',
  }[effect];
  const what = `${name.toLowerCase()} ${sinceWords(now - fault.fromAt)}`;
  return { code: `sensor-${fault.kind}`, text: `Sensor ${who}: ${what}. ${fault.says}${does}` };
}

function sinceWords(ms: number): string {
  const hours = ms / hourMs;
  if (hours < 1.5) return `for ${Math.max(1, Math.round(hours * 60))} min`;
  return hours < 48 ? `for ${Math.round(hours)} h` : `for ${Math.round(hours / 24)} days`;
}
