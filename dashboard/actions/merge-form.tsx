import { useCallback } from 'preact/hooks';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import type { ActionProps } from './action-props.ts';

/** Puts the boards of another batch to these. */
export function MergeForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const { words } = useReader();
  const { merge, kept, move } = words.actions;
  const sending = useSending();
  const { replied } = useReply(useCallback(() => api.call('listBatches', {}), [api]));
  const others =
    replied.kind === 'there'
      ? replied.reply.filter((one) => !one.closed && one.id !== batch.id)
      : [];

  async function record(form: FormData): Promise<void> {
    const batchId = textOf(form, 'batchId');
    const about = { batchIds: [batch.id, batchId], batchName: batch.name };
    const merged = await sending.record('mergeBatch', about, (id) => ({
      params: { id: batch.id },
      body: { id, batchId, at: whenOf(form, 'at', live.clock().shedNow) },
    }));
    if (merged === null) return;
    if (merged.kind === 'waits') return onDone(kept);
    await live.refresh();
    const { batch: whole, warnings } = merged.reply;
    onDone(
      <>
        <p>{merge.recorded(whole.boards.count)}</p>
        {warnings.map((warning) => (
          <p key={warning.code}>
            <Said sentence={warning} />
          </p>
        ))}
      </>,
    );
  }

  if (others.length === 0) return <p>{merge.none}</p>;
  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField
        label={merge.which}
        name="batchId"
        pointer="/batchId"
        problem={sending.problem}
        hint={merge.hint}
      >
        {others.map((one) => (
          <option key={one.id} value={one.id}>
            {merge.option(one.name, one.boards.count, one.lies.placeName)}
          </option>
        ))}
      </SelectField>
      <WhenField
        legend={move.when}
        name="at"
        pointer="/at"
        problem={sending.problem}
        now={live.now.peek()}
      />
      <button type="submit" class="button button-main">
        {merge.record}
      </button>
    </WriteFrame>
  );
}
