import { useState } from 'preact/hooks';
import type { RemarkKind } from '../../daemon/contract/batch.ts';
import { withinSentence } from '../format/lists.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { type ActionProps, about } from './action-props.ts';

/** Records what was seen or what happened. */
export function RemarkForm({ batch, onDone, first }: ActionProps & { first: RemarkKind }) {
  const { live } = useShed();
  const { words, locale } = useReader();
  const { remark: remarkWords, kept } = words.actions;
  const { remarks } = words.things;
  const sending = useSending();
  const [kind, setKind] = useState<RemarkKind>(first);

  async function record(form: FormData): Promise<void> {
    const remark = await sending.record('createRemark', about(batch), (id) => ({
      params: { id: batch.id },
      body: {
        id,
        kind,
        at: new Date(live.clock().shedNow).toISOString(),
        text: textOf(form, 'text') || null,
      },
    }));
    if (remark === null) return;
    if (remark.kind === 'waits') return onDone(kept);
    onDone(
      <>
        <p>{remarkWords.recorded(withinSentence(remarks[remark.reply.kind], locale))}</p>
        {remark.reply.cure.length > 0 && (
          <ol class="cure-lines">
            {remark.reply.cureSaid.map((line) => (
              <li key={line.text}>
                <Said sentence={line} />
              </li>
            ))}
          </ol>
        )}
      </>,
    );
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <Choice
        legend={remarkWords.what}
        name="kind"
        options={(Object.keys(remarks) as RemarkKind[]).map((value) => ({
          value,
          words: remarks[value],
        }))}
        value={kind}
        onChange={setKind}
      />
      <TextField label={remarkWords.text} name="text" pointer="/text" problem={sending.problem} />
      <button type="submit" class="button button-main">
        {remarkWords.record}
      </button>
    </WriteFrame>
  );
}
