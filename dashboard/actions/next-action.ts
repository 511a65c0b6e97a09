import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate, VerdictWord } from '../../daemon/contract/gate.ts';
import { nextCoat } from './coat-guess.ts';

/** What there is to do with a batch now, as its biggest button has it. */
export type NextAction =
  | { readonly kind: 'first-coat'; readonly coat: string }
  | { readonly kind: 'next-coat'; readonly coat: string }
  /** Feel it: the question stands right under the verdict. */
  | { readonly kind: 'touch' }
  | { readonly kind: 'move' }
  | { readonly kind: 'sanded' }
  | { readonly kind: 'close' }
  | { readonly kind: 'reopen' };

/**
 * @param gate - the job that the batch waits for; null when it waits for none
 * @param verdict - of that job; null where there is none
 */
export function nextAction(
  batch: Pick<Batch, 'plan' | 'coats' | 'closed'>,
  gate: Gate | null,
  verdict: VerdictWord | null,
): NextAction {
  if (batch.closed) return { kind: 'reopen' };
  const coat = batch.plan.coats[nextCoat(batch)]?.name ?? '';
  if (batch.coats.length === 0) return { kind: 'first-coat', coat };
  if (gate === null) return { kind: 'close' };
  if (verdict !== 'ready') return { kind: 'touch' };
  switch (gate) {
    case 'recoat':
      return { kind: 'next-coat', coat };
    case 'stack':
    case 'mount':
      return { kind: 'move' };
    case 'sand':
      return { kind: 'sanded' };
    case 'turn':
      return { kind: 'touch' };
  }
}
