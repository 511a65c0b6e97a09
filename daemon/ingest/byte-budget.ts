/**
 * Bytes that many holders keep together, within a limit: when it is passed, the one that keeps most
 * has to go, until it fits again.
 *
 * @param limitBytes - of all together
 * @param kept - bytes that a holder keeps just now
 * @param drop - makes a holder let go; it is forgotten here
 */
export function byteBudget<Holder extends object>(
  limitBytes: number,
  kept: (holder: Holder) => number,
  drop: (holder: Holder) => void,
) {
  const known = new Map<Holder, number>();
  let total = 0;

  function forget(holder: Holder): void {
    total -= known.get(holder) ?? 0;
    known.delete(holder);
  }

  function settle(): void {
    // What was told before may be long gone.
    total = 0;
    for (const holder of known.keys()) {
      const bytes = kept(holder);
      known.set(holder, bytes);
      total += bytes;
    }
    while (total > limitBytes) {
      const [most] = [...known].reduce((a, b) => (b[1] > a[1] ? b : a));
      forget(most);
      drop(most);
    }
  }

  return {
    /** To be called when a holder may keep more than before. */
    changed(holder: Holder): void {
      const bytes = kept(holder);
      total += bytes - (known.get(holder) ?? 0);
      known.set(holder, bytes);
      if (total > limitBytes) settle();
    },
    forget,
  };
}
