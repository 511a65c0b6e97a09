import type { GateVerdict } from '../../daemon/contract/gate.ts';
import type { Calendar } from './calendar.ts';
import { type When, whenOf, whenWords } from './painters-time.ts';

export interface TimeLeft {
  /** The main line: “Likely tomorrow after lunch”. */
  readonly likely: string;
  /** The doubt around it: “between this evening and Friday before lunch”; null without any. */
  readonly window: string | null;
}

const LIKELY = 0.5;

/**
 * When a job’s time comes, as the wall says it.
 *
 * @param verdict - its times are null when unknown or already passed
 * @param now - UTC epoch ms
 */
export function timeLeft(
  verdict: Pick<GateVerdict, 'verdict' | 'probability' | 'early' | 'likely' | 'late'>,
  now: number,
  calendar: Calendar,
): TimeLeft {
  const words = (moment: string | null) =>
    moment === null ? null : whenWords(Date.parse(moment), now, calendar);
  const late = words(verdict.late);
  switch (verdict.verdict) {
    case 'ready':
      return { likely: 'Nine in ten it is there', window: 'Feel it before you go on.' };
    case 'hold':
      return { likely: 'Cured, but held', window: null };
    case 'test':
      return {
        likely: 'Worth feeling now',
        window: late === null ? null : nineInTen(late),
      };
    case 'wait': {
      const likely = words(verdict.likely);
      if (likely === null) {
        return verdict.probability >= LIKELY
          ? { likely: 'Likely about now', window: late === null ? null : nineInTen(late) }
          : { likely: 'Can’t tell when', window: null };
      }
      return {
        likely: `Likely ${likely}`,
        window: windowWords(words(verdict.early), late, likely),
      };
    }
  }
}

function windowWords(early: string | null, late: string | null, likely: string): string | null {
  if (late === null) return null;
  if (early === null || early === 'now') return `any time until ${late}`;
  if (early === late) return early === likely ? null : early;
  return `between ${early} and ${late}`;
}

function nineInTen(late: string): string | null {
  if (late === 'now') return null;
  if (late.startsWith('in ')) return `nine in ten ${late}`;
  return `nine in ten by ${late.replace(/^on /, '')}`;
}

/** When a job’s time comes; a catalogue says it in its language. */
export type Expected =
  | { readonly kind: 'ready' | 'held' | 'cannot-tell' }
  | { readonly kind: 'feel-now' | 'about-now'; readonly late: When | null }
  | {
      readonly kind: 'likely';
      readonly early: When | null;
      readonly likely: When;
      readonly late: When | null;
    };

/**
 * When a job’s time comes.
 *
 * @param verdict - its times are null when unknown or already passed
 * @param now - UTC epoch ms
 */
export function expectedAt(
  verdict: Pick<GateVerdict, 'verdict' | 'probability' | 'early' | 'likely' | 'late'>,
  now: number,
  calendar: Calendar,
): Expected {
  const when = (moment: string | null) =>
    moment === null ? null : whenOf(Date.parse(moment), now, calendar);
  const late = when(verdict.late);
  switch (verdict.verdict) {
    case 'ready':
      return { kind: 'ready' };
    case 'hold':
      return { kind: 'held' };
    case 'test':
      return { kind: 'feel-now', late };
    case 'wait': {
      const likely = when(verdict.likely);
      if (likely !== null) return { kind: 'likely', early: when(verdict.early), likely, late };
      return verdict.probability >= LIKELY ? { kind: 'about-now', late } : { kind: 'cannot-tell' };
    }
  }
}
