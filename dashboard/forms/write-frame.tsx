import type { ComponentChildren } from 'preact';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { SentForm } from './sent-form.tsx';

interface WriteFrameProps {
  problem: Problem | null;
  /** What the page itself found wrong before anything was sent: another object at each press. */
  fault?: object | null;
  busy: boolean;
  onSend: (form: FormData, element: HTMLFormElement) => Promise<void>;
  children: ComponentChildren;
}

/** A form that is closed, and says why, where changes are not allowed. */
export function WriteFrame({ problem, fault = null, busy, onSend, children }: WriteFrameProps) {
  const may = mayTry(useShed().live.overview.value);
  return (
    <SentForm
      problem={problem}
      fault={fault}
      busy={busy}
      closed={!may}
      onSend={onSend}
      before={may ? null : <WhyClosed />}
    >
      {children}
    </SentForm>
  );
}

/** Whether a change can be sent from here: who is not logged in is asked for the PIN then. */
export function mayTry(overview: Overview | null): boolean {
  return overview !== null && overview.writing !== 'from-the-computer';
}

/** Why nothing can be changed from here. */
export function WhyClosed() {
  const { forms } = useReader().words;
  return <p class="why-closed">{forms.closed(<a href="#/access">{forms.choosePin}</a>)}</p>;
}
