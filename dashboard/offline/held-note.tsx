import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import type { Became, Ticket } from './outbox.ts';

/** So long a mis-tap can be taken back before it is sent, ms. Assumption. */
export const HOLD_MS = 5_000;

interface HeldNoteProps {
  ticket: Ticket;
  /** What was recorded, as a sentence. */
  recorded: string;
  /** Called once the daemon has taken it. */
  onSent?: (reply: unknown) => void;
  /** What the daemon’s reply tells. */
  children?: (reply: unknown) => ComponentChildren;
}

/** What was recorded with one tap, with a way back while it is not sent. */
export function HeldNote({ ticket, recorded, onSent, children }: HeldNoteProps) {
  const { outbox } = useShed();
  const { actions } = useReader().words;
  const [became, setBecame] = useState<Became | null>(null);
  const isHere = outbox.entries.value.some(({ id }) => id === ticket.id);
  // A ticket is one tap: what it became does not change again.
  useEffect(() => {
    let isShown = true;
    void ticket.became.then((next) => {
      if (!isShown) return;
      setBecame(next);
      if (next.kind === 'sent') onSent?.(next.reply);
    });
    return () => {
      isShown = false;
    };
  }, [ticket]);
  if (became?.kind === 'taken-back') return <p>{actions.takenBack}</p>;
  if (became?.kind === 'refused' || became?.kind === 'not-kept') {
    return (
      <>
        <ProblemNote problem={became.problem} />
        {became.kind === 'refused' && <a href="#/waiting">{actions.toCorrect}</a>}
      </>
    );
  }
  return (
    <>
      <p>{recorded}</p>
      {became?.kind === 'waits' && isHere && <p>{actions.kept}</p>}
      {became?.kind === 'sent' && children?.(became.reply)}
      {became?.kind !== 'sent' && isHere && (
        <button
          type="button"
          class="button button-thumb"
          onClick={() => void outbox.takeBack(ticket.id)}
        >
          {actions.takeBack}
        </button>
      )}
    </>
  );
}
