import { useEffect, useRef } from 'preact/hooks';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { LogInForm } from './log-in-form.tsx';

/** Comes up when something was sent that needs the PIN; afterwards it is sent again by itself. */
export function PinDialog() {
  const { prompt, live } = useShed();
  const { pin } = useReader().words;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const { activeElement: before } = document;
    dialog.current?.showModal();
    // A dialog that is taken away gives the focus back to nobody, and until it is gone nothing else takes it.
    return () =>
      queueMicrotask(() => {
        if (before instanceof HTMLElement) before.focus();
      });
  }, []);
  return (
    <dialog
      ref={dialog}
      class="pin-dialog"
      aria-labelledby="pin-dialog-title"
      onCancel={() => prompt.answer(false)}
    >
      <h2 id="pin-dialog-title">{pin.needed}</h2>
      <p class="pin-dialog-why">{pin.keptUntilThen}</p>
      <LogInForm
        onLoggedIn={() => {
          live.reopen();
          prompt.answer(true);
        }}
      />
      <button type="button" class="button button-quiet" onClick={() => prompt.answer(false)}>
        {pin.notNow}
      </button>
    </dialog>
  );
}
