import type { ComponentChildren } from 'preact';
import { PlainForm } from '../forms/plain-form.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import type { Sending } from '../forms/use-sending.ts';

interface AccessFormProps {
  sending: Sending;
  onSend: (form: FormData) => Promise<unknown>;
  children: ComponentChildren;
}

/** A form that is open to everyone: here one logs in. What was typed is gone once it was taken. */
export function AccessForm({ sending, onSend, children }: AccessFormProps) {
  return (
    <PlainForm
      onSend={(form, element) => {
        void onSend(form).then((taken) => {
          if (taken !== null) element.reset();
        });
      }}
    >
      <fieldset class="form-body" disabled={sending.busy}>
        {children}
      </fieldset>
      <ProblemNote problem={sending.problem} />
    </PlainForm>
  );
}
