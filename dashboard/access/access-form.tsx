import type { ComponentChildren } from 'preact';
import { SentForm } from '../forms/sent-form.tsx';
import type { Sending } from '../forms/use-sending.ts';

interface AccessFormProps {
  sending: Sending;
  onSend: (form: FormData) => Promise<unknown>;
  children: ComponentChildren;
}

/** A form that is open to everyone: here one logs in. What was typed is gone once it was taken. */
export function AccessForm({ sending, onSend, children }: AccessFormProps) {
  return (
    <SentForm
      problem={sending.problem}
      busy={sending.busy}
      onSend={async (form, element) => {
        if ((await onSend(form)) !== null) element.reset();
      }}
    >
      {children}
    </SentForm>
  );
}
