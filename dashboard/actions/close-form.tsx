import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { type ActionProps, about } from './action-props.ts';

/** Closes a batch whose job is done, or opens it again. */
export function CloseForm({ batch, onDone }: ActionProps) {
  const { close, kept } = useReader().words.actions;
  const sending = useSending();
  const closed = !batch.closed;

  async function record(): Promise<void> {
    const changed = await sending.record('changeBatch', about(batch), () => ({
      params: { id: batch.id },
      body: { closed },
    }));
    if (changed === null) return;
    onDone(changed.kind === 'waits' ? kept : closed ? close.closed : close.opened);
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <p>{closed ? close.leaves : close.comesBack}</p>
      <button type="submit" class="button button-main">
        {closed ? close.close : close.open}
      </button>
    </WriteFrame>
  );
}
