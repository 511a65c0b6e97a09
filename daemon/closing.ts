type Closer = () => Promise<unknown> | unknown;

export interface Closing {
  /** Has this done when the daemon closes, before all that was named earlier. */
  atClose(closer: Closer): void;
  close(): Promise<void>;
}

/** What is started in order and closed the other way. */
export function closing(): Closing {
  const closers: Closer[] = [];
  return {
    atClose(closer) {
      closers.push(closer);
    },
    async close() {
      for (const closer of closers.splice(0).reverse()) await closer();
    },
  };
}
