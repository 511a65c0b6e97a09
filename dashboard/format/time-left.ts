import type { GateVerdict } from '../../daemon/contract/gate.ts';
import type { Calendar } from './calendar.ts';
import { type When, whenOf } from './painters-time.ts';

const LIKELY = 0.5;

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
