import type { Batch, RemarkKind } from '../../daemon/contract/batch.ts';
import type { Coating } from '../../daemon/contract/coating.ts';
import { whenWords } from '../format/painters-time.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { ragCaution } from '../words/caution-words.ts';
import { remarkWords } from '../words/thing-words.ts';

interface LookAgainProps {
  batch: Batch;
  look: NonNullable<Coating['look']>;
  onAnswered: () => void;
}

const answers: readonly RemarkKind[] = ['sunk-in', 'still-standing', 'wiped-off', 'runs'];

/** Half an hour after a coat: what still shines, and the rags. */
export function LookAgain({ batch, look, onAnswered }: LookAgainProps) {
  const { api, live, calendar } = useShed();
  const sending = useSending();
  const now = live.now.value;
  const from = Date.parse(look.fromAt);

  async function answer(kind: RemarkKind): Promise<void> {
    const at = new Date(live.now.peek()).toISOString();
    const remark = await sending.send((id) =>
      api.call('createRemark', { params: { id: batch.id }, body: { id, at, kind } }),
    );
    if (remark !== null) onAnswered();
  }

  return (
    <section class="caution caution-now" aria-labelledby="look-title">
      <h2 id="look-title">Look again {now < from ? whenWords(from, now, calendar) : 'now'}</h2>
      <p>{look.text}</p>
      <p>{ragCaution.lines[0]}</p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={async () => {}}>
        <div class="action-row">
          {answers.map((kind) => (
            <button key={kind} type="button" class="button" onClick={() => void answer(kind)}>
              {remarkWords[kind]}
            </button>
          ))}
        </div>
      </WriteFrame>
    </section>
  );
}
