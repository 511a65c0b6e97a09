import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import type { ActionProps } from './action-props.ts';

/** Closes a batch whose job is done, or opens it again. */
export function CloseForm({ batch, onDone }: ActionProps) {
  const { api } = useShed();
  const sending = useSending();
  const closed = !batch.closed;

  async function record(): Promise<void> {
    const changed = await sending.send(() =>
      api.call('changeBatch', { params: { id: batch.id }, body: { closed } }),
    );
    if (changed !== null) onDone(closed ? 'The batch is closed.' : 'The batch is open again.');
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <p>
        {closed
          ? 'It leaves the wall. All that was recorded stays, and it can be opened again.'
          : 'It comes back to the wall.'}
      </p>
      <button type="submit" class="button button-main">
        {closed ? 'Close it' : 'Open it again'}
      </button>
    </WriteFrame>
  );
}
