import { useRef, useState } from 'preact/hooks';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import type { ActionProps } from './action-props.ts';
import { smallerPicture } from './smaller-picture.ts';

/** Takes a photo with the phone, or one from a file, and keeps it with the batch. */
export function PhotoForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const input = useRef<HTMLInputElement>(null);
  const [fault, setFault] = useState<string | null>(null);

  async function send(form: FormData): Promise<void> {
    const file = input.current?.files?.[0];
    if (!file) {
      setFault('Take or choose a photo first.');
      return;
    }
    const picture = await smallerPicture(file);
    if (picture === null) {
      setFault('This file is no photo that this device can read.');
      return;
    }
    setFault(null);
    const text = textOf(form, 'text');
    const kept = await sending.send((id) =>
      api.call('createPhoto', {
        params: { id: batch.id },
        body: {
          id,
          at: new Date(live.now.value).toISOString(),
          picture,
          ...(text === '' ? {} : { text }),
        },
      }),
    );
    if (kept !== null) onDone('The photo is kept; it is in the report.');
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={send}>
      <div class={fault === null ? 'field' : 'field field-faulty'}>
        <label for="photo-file">Photo</label>
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
          <p class="field-fault" id="photo-fault" role="alert">
            {fault}
          </p>
        )}
      </div>
      <TextField label="What it shows" name="text" pointer="/text" problem={sending.problem} />
      <button type="submit" class="button button-main">
        Keep the photo
      </button>
    </WriteFrame>
  );
}
