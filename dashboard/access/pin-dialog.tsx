import { useEffect, useRef } from 'preact/hooks';
import { useShed } from '../shed-context.ts';
import { LogInForm } from './log-in-form.tsx';

/** Comes up when something was sent that needs the PIN; afterwards it is sent again by itself. */
export function PinDialog() {
  const { prompt } = useShed();
  return prompt.asked.value ? <OpenDialog /> : null;
}

function OpenDialog() {
  const { prompt, live } = useShed();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      class="pin-dialog"
      aria-labelledby="pin-dialog-title"
      onCancel={() => prompt.answer(false)}
    >
      <h2 id="pin-dialog-title">This needs the PIN</h2>
      <p class="pin-dialog-why">What you entered is kept, and sent once you are logged in.</p>
      <LogInForm
        onLoggedIn={() => {
          live.reopen();
          prompt.answer(true);
        }}
      />
      <button type="button" class="button button-quiet" onClick={() => prompt.answer(false)}>
        Not now
      </button>
    </dialog>
  );
}
