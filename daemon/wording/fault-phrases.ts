import { faultEffects } from '../contract/fault-effect.ts';
import type { FaultEffect, FaultKind } from '../contract/sensor-fault.ts';
import type { Phrase, Phrases } from './phrase.ts';
import type { FaultSentences, SeenSentences, StandingFault } from './subject/fault.ts';

/** What a language has to know to speak of faults of sensors. */
export interface FaultWords {
  readonly names: Readonly<Record<FaultKind, string>>;
  /** What a fault means, and what to do. */
  readonly explanations: Readonly<Record<FaultKind, string>>;
  /** How long a fault has stood. */
  readonly lasting: Readonly<Record<'minutes' | 'hours' | 'days', (count: number) => string>>;
  /** The head of a fault that stands; `name` as on its own. */
  readonly standing: (sensor: string, name: string, lasting: string) => string;
  /** A sentence, or nothing. */
  readonly effects: Readonly<Record<FaultEffect, string>>;
  readonly dampUnknown: (fault: string) => string;
  readonly seen: Phrases<SeenSentences>;
}

/** From so many on the age of a fault is told in the next larger unit. */
export const MANY_MINUTES = 90;
export const MANY_HOURS = 48;

/** Everything that is said of faults of sensors, in the words of one language. */
export function faultPhrases(words: FaultWords): Phrases<FaultSentences> {
  const lasting = (minutes: number): string => {
    if (minutes < MANY_MINUTES) return words.lasting.minutes(minutes);
    const hours = Math.round(minutes / 60);
    return hours < MANY_HOURS
      ? words.lasting.hours(hours)
      : words.lasting.days(Math.round(hours / 24));
  };

  const standing =
    (kind: FaultKind): Phrase<StandingFault> =>
    ({ sensor, forMinutes, seen }, _speak, say) => {
      const head = words.standing(sensor, words.names[kind], lasting(forMinutes));
      const what = typeof seen === 'string' ? seen : say(seen);
      return [head, what, words.effects[faultEffects[kind]]]
        .filter((part) => part !== '')
        .join(' ');
    };

  const ofEachKind = Object.entries(words.names).flatMap(([kind, name]) => [
    [`fault-name/${kind}`, () => name],
    [`fault-explanation/${kind}`, () => words.explanations[kind as FaultKind]],
    [`sensor-${kind}`, standing(kind as FaultKind)],
  ]);
  return {
    ...(Object.fromEntries(ofEachKind) as Omit<
      Phrases<FaultSentences>,
      keyof SeenSentences | 'damp-unknown'
    >),
    'damp-unknown': ({ fault }, _speak, say) => words.dampUnknown(say(fault)),
    ...words.seen,
  };
}
