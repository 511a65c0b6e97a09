import { useState } from 'preact/hooks';
import type { Batch, RemarkKind } from '../../daemon/contract/batch.ts';
import type { Coating } from '../../daemon/contract/coating.ts';
import { about } from '../actions/action-props.ts';
import { whenOf } from '../format/painters-time.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { newId } from '../new-id.ts';
import { HeldNote, HOLD_MS } from '../offline/held-note.tsx';
import type { Ticket } from '../offline/outbox.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';

interface LookAgainProps {
  batch: Batch;
  look: NonNullable<Coating['look']>;
  onAnswered: () => void;
}

const answers: readonly RemarkKind[] = ['sunk-in', 'still-standing', 'wiped-off', 'runs'];

/** Half an hour after a coat: what still shines, and the rags. */
export function LookAgain({ batch, look, onAnswered }: LookAgainProps) {
  const { live, outbox } = useShed();
  const { words, calendar } = useReader();
  const [answered, setAnswered] = useState<{ ticket: Ticket; kind: RemarkKind } | null>(null);
  const now = live.now.value;
  const from = Date.parse(look.fromAt);
  const title = words.trade.look;

  async function answer(kind: RemarkKind): Promise<void> {
    const id = newId();
    const at = new Date(live.clock().shedNow).toISOString();
    const given = { params: { id: batch.id }, body: { id, at, kind } };
    const ticket = await outbox.record(
      { ...about(batch), id, name: 'createRemark', given },
      HOLD_MS,
    );
    setAnswered({ ticket, kind });
  }

  return (
    <section class="caution caution-now" aria-labelledby="look-title">
      <h2 id="look-title">
        {now < from ? title.at(words.times.when(whenOf(from, now, calendar))) : title.now}
      </h2>
      <p>
        <Said sentence={look} />
      </p>
      <p>{words.cautions.rags.lines[0]}</p>
      <WriteFrame problem={null} busy={false} onSend={async () => {}}>
        <div class="action-row">
          {answers.map((kind) => (
            <button key={kind} type="button" class="button" onClick={() => void answer(kind)}>
              {words.things.remarks[kind]}
            </button>
          ))}
        </div>
      </WriteFrame>
      <div role="status">
        {answered !== null && (
          <HeldNote
            key={answered.ticket.id}
            ticket={answered.ticket}
            recorded={words.actions.remark.recorded(words.things.remarks[answered.kind])}
            onSent={onAnswered}
          />
        )}
      </div>
    </section>
  );
}
