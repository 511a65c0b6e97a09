/**
 * Where the figure of one of several fields stands in what the daemon got: empty ones are left out.
 * Where all were empty the fault is about the list, and the first field shows it.
 *
 * @param at - which field, from 0
 * @param sent - the fields that were filled in
 * @returns RFC 6901 pointer
 */
export function pointerOf(at: number, sent: readonly number[]): string {
  return sent.length === 0 && at === 0 ? '/values' : `/values/${sent.indexOf(at)}`;
}
