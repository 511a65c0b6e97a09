import { useCallback } from 'preact/hooks';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import type { ActionProps } from './action-props.ts';

/** Puts the boards of another batch to these. */
export function MergeForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const { replied } = useReply(useCallback(() => api.call('listBatches', {}), [api]));
  const others =
    replied.kind === 'there'
      ? replied.reply.filter((one) => !one.closed && one.id !== batch.id)
      : [];

  async function record(form: FormData): Promise<void> {
    const merged = await sending.send((id) =>
      api.call('mergeBatch', {
        params: { id: batch.id },
        body: { id, batchId: textOf(form, 'batchId'), at: whenOf(form, 'at', live.now.peek()) },
      }),
    );
    if (merged === null) return;
    await live.refresh();
    const { boards } = merged.batch;
    const said = `${boards.count} boards now. Verdicts speak for the slower of them.`;
    onDone([said, ...merged.warnings.map(({ text }) => text)].join(' '));
  }

  if (others.length === 0) return <p>There is no other open batch.</p>;
  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField
        label="Which boards come to these"
        name="batchId"
        pointer="/batchId"
        problem={sending.problem}
        hint="Only boards of the same timber, plan and coats. Their batch is closed by it."
      >
        {others.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}, {one.boards.count} boards at {one.lies.placeName}
          </option>
        ))}
      </SelectField>
      <WhenField
        legend="When"
        name="at"
        pointer="/at"
        problem={sending.problem}
        now={live.now.peek()}
      />
      <button type="submit" class="button button-main">
        Put them together
      </button>
    </WriteFrame>
  );
}
