import type { ComponentChildren } from 'preact';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { NewEntry } from '../offline/entry.ts';

/** What every form of the batch page is handed. */
export interface ActionProps {
  batch: Batch;
  /** Called after something was recorded, with a sentence that says what. */
  onDone: (said: ComponentChildren) => void;
}

/** Which batch an entry is about, as it is listed while it waits. */
export function about(batch: Batch): Pick<NewEntry, 'batchIds' | 'batchName'> {
  return { batchIds: [batch.id], batchName: batch.name };
}
