import { useRef, useState } from 'preact/hooks';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { type ActionProps, about } from './action-props.ts';
import { smallerPicture } from './smaller-picture.ts';

/** Takes a photo with the phone, or one from a file, and keeps it with the batch. */
export function PhotoForm({ batch, onDone }: ActionProps) {
  const { live } = useShed();
  const { photo, kept } = useReader().words.actions;
  const sending = useSending();
  const input = useRef<HTMLInputElement>(null);
  const [fault, setFault] = useState<{ said: string } | null>(null);

  async function send(form: FormData): Promise<void> {
    const at = new Date(live.clock().shedNow).toISOString();
    const file = input.current?.files?.[0];
    if (!file) {
      setFault({ said: photo.chooseFirst });
      return;
    }
    const picture = await smallerPicture(file);
    if (picture === null) {
      setFault({ said: photo.unreadable });
      return;
    }
    setFault(null);
    const text = textOf(form, 'text');
    const sent = await sending.record('createPhoto', about(batch), (id) => ({
      params: { id: batch.id },
      body: { id, at, picture, ...(text === '' ? {} : { text }) },
    }));
    if (sent !== null) onDone(sent.kind === 'waits' ? kept : photo.kept);
  }

  return (
    <WriteFrame problem={sending.problem} fault={fault} busy={sending.busy} onSend={send}>
      <div class={fault === null ? 'field' : 'field field-faulty'}>
        <label for="photo-file">{photo.label}</label>
        <input
          ref={input}
          id="photo-file"
          class="input"
          type="file"
          accept="image/*"
          capture="environment"
          {...(fault === null ? {} : { 'aria-invalid': 'true', 'aria-describedby': 'photo-fault' })}
        />
        {fault !== null && (
          <p class="field-fault" id="photo-fault">
            {fault.said}
          </p>
        )}
      </div>
      <TextField label={photo.shows} name="text" pointer="/text" problem={sending.problem} />
      <button type="submit" class="button button-main">
        {photo.keep}
      </button>
    </WriteFrame>
  );
}
