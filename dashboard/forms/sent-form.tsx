import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import { ProblemNote } from './problem-note.tsx';
import { useFirstFault } from './use-first-fault.ts';

interface SentFormProps {
  problem: Problem | null;
  /** What the page itself found wrong before anything was sent: another object at each press. */
  fault?: object | null;
  /** On its way: another press sends nothing. */
  busy: boolean;
  /** Nothing can be typed. */
  closed?: boolean;
  onSend: (form: FormData, element: HTMLFormElement) => Promise<unknown>;
  /** Above the fields. */
  before?: ComponentChildren;
  children: ComponentChildren;
}

/**
 * A form that is sent to the daemon. What was typed stays; after a refusal the focus is at the first
 * field at fault. While it is sent nothing is closed, for what is closed loses the focus.
 */
export function SentForm(props: SentFormProps) {
  const { problem, fault = null, busy, closed = false, onSend, before, children } = props;
  const form = useRef<HTMLFormElement>(null);
  const areFieldsMarked = useFirstFault(form, fault ?? problem);
  return (
    <form
      ref={form}
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (busy) return;
        const element = event.currentTarget;
        void onSend(new FormData(element), element);
      }}
    >
      {before}
      <fieldset class="form-body" disabled={closed} aria-busy={busy}>
        {children}
      </fieldset>
      <ProblemNote problem={problem} areFieldsMarked={areFieldsMarked} />
    </form>
  );
}
