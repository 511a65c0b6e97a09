/** Who wants to hear that something changed: of one batch, or (null) of anything. */
export type ChangeListener = (batchId: string | null) => void;

export interface Changes {
  changed: ChangeListener;
  /** @returns stops listening */
  onChange(listener: ChangeListener): () => void;
  heard(): boolean;
}

export function changes(): Changes {
  const listeners = new Set<ChangeListener>();
  return {
    changed(batchId) {
      for (const listener of listeners) listener(batchId);
    },
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    heard: () => listeners.size > 0,
  };
}
