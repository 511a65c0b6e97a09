import { useState } from 'preact/hooks';
import type { RemarkKind } from '../../daemon/contract/batch.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { remarkWords } from '../words/thing-words.ts';
import type { ActionProps } from './action-props.ts';

const kinds = Object.entries(remarkWords) as [RemarkKind, string][];

/** Records what was seen or what happened. */
export function RemarkForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [kind, setKind] = useState<RemarkKind>('got-wet');

  async function record(form: FormData): Promise<void> {
    const remark = await sending.send((id) =>
      api.call('createRemark', {
        params: { id: batch.id },
        body: {
          id,
          kind,
          at: new Date(live.now.peek()).toISOString(),
          text: textOf(form, 'text') || null,
        },
      }),
    );
    if (remark === null) return;
    onDone(
      <>
        <p>Recorded: {remarkWords[remark.kind].toLowerCase()}.</p>
        {remark.cure.length > 0 && (
          <ol class="cure-lines">
            {remark.cure.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        )}
      </>,
    );
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <Choice
        legend="What was it"
        name="kind"
        options={kinds.map(([value, words]) => ({ value, words }))}
        value={kind}
        onChange={setKind}
      />
      <TextField label="In your words" name="text" pointer="/text" problem={sending.problem} />
      <button type="submit" class="button button-main">
        Record the remark
      </button>
    </WriteFrame>
  );
}
