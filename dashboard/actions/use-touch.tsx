import { useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import type { RouteReply } from '../../daemon/contract/routes.ts';
import { newId } from '../new-id.ts';
import { HeldNote, HOLD_MS } from '../offline/held-note.tsx';
import type { Ticket } from '../offline/outbox.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { ChangeLines } from '../trade/change-lines.tsx';
import { about } from './action-props.ts';

export interface Felt {
  readonly gate: Gate;
  readonly passed: boolean;
  readonly on: 'board' | 'offcut';
}

/** Records a touch test and says what came of it. */
export function useTouch(batch: Batch, onSent: () => void) {
  const { outbox, live } = useShed();
  const { words } = useReader();
  const { touch } = words.actions;
  const [isBusy, setBusy] = useState(false);
  const isOut = useRef(false);

  /** @returns what to show; null while another one is on its way */
  async function record(felt: Felt) {
    if (isOut.current) return null;
    isOut.current = true;
    const id = newId();
    const at = new Date(live.clock().shedNow).toISOString();
    setBusy(true);
    const ticket: Ticket = await outbox.record(
      {
        ...about(batch),
        id,
        name: 'createTest',
        given: { params: { id: batch.id }, body: { id, at, ...felt } },
      },
      HOLD_MS,
    );
    isOut.current = false;
    setBusy(false);
    const { infinitive } = words.jobs[felt.gate];
    return (
      <HeldNote
        key={ticket.id}
        ticket={ticket}
        recorded={felt.passed ? touch.recordedPassed(infinitive) : touch.recordedFailed(infinitive)}
        onSent={onSent}
      >
        {(reply) => <ChangeLines changed={(reply as RouteReply<'createTest'>).changed} />}
      </HeldNote>
    );
  }

  return { record, isBusy };
}
