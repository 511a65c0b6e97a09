import type { ComponentChildren } from 'preact';
import type { Batch } from '../../daemon/contract/batch.ts';

/** What every form of the batch page is handed. */
export interface ActionProps {
  batch: Batch;
  /** Called after something was recorded, with a sentence that says what. */
  onDone: (said: ComponentChildren) => void;
}
