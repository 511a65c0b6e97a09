import { useRef } from 'preact/hooks';

/** What a form begins with, and who fills it in. */
export interface BegunForm<T> {
  /** The newest until somebody fills it in, and then as it was: it is to be its key. */
  readonly start: T;
  /** Somebody typed, chose or tapped. */
  touched(): void;
  /** What stands in it is on its way. */
  sending(): void;
  /** It was taken: what was filled in after it was sent stays, and else it begins anew. */
  taken(): void;
}

/** Begins a form with what is known, and anew when that changes, but not under somebody’s hands. */
export function useBegunForm<T>(newest: T): BegunForm<T> {
  const hands = useRef({ are: false, sinceSent: false });
  const start = useRef(newest);
  if (!hands.current.are) start.current = newest;
  return {
    start: start.current,
    touched() {
      hands.current = { are: true, sinceSent: true };
    },
    sending() {
      hands.current.sinceSent = false;
    },
    taken() {
      hands.current.are = hands.current.sinceSent;
    },
  };
}
