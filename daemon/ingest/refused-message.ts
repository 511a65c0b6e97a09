import type { Refusal } from '../../sensors/payload/refusal.ts';
import type { RefusedMessage } from '../rules/facts.ts';

/** How much of a refused message is kept for inspection, in characters. */
export const keptCharacters = 400;

const utf8 = new TextDecoder('utf-8', { fatal: true });

/**
 * A payload as text; null where it is not UTF-8.
 *
 * @param cut - the payload goes on; a letter split at its end is left out
 */
export function textOf(payload: Uint8Array, cut: boolean): string | null {
  try {
    const decoder = cut ? new TextDecoder('utf-8', { fatal: true }) : utf8;
    return decoder.decode(payload, { stream: cut });
  } catch {
    return null;
  }
}

/**
 * A refused message as it is kept for inspection.
 *
 * @param text - of the payload; null where it has none
 * @param at - UTC epoch ms of its arrival
 */
export const refusedMessage = (
  { code, detail, said }: Refusal,
  { topic, payload }: { topic: string; payload: Uint8Array },
  text: string | null,
  at: number,
): RefusedMessage => ({
  at,
  topic: topic.slice(0, keptCharacters),
  code,
  detail,
  detailSaid: said,
  payloadStart: (
    text ?? Buffer.from(payload.subarray(0, keptCharacters / 2)).toString('hex')
  ).slice(0, keptCharacters),
  payloadBytes: payload.byteLength,
});
