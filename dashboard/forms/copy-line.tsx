import { useId, useRef, useState } from 'preact/hooks';
import { useReader } from '../reader.ts';

interface CopyLineProps {
  label: string;
  text: string;
}

/** A line, or several, to be taken into another program. */
export function CopyLine({ label, text }: CopyLineProps) {
  const { copying } = useReader().words;
  const [done, setDone] = useState('');
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();

  async function copy(): Promise<void> {
    field.current?.select();
    try {
      // Browsers hand the clipboard only to pages over TLS, and a shed’s pages seldom are.
      await navigator.clipboard.writeText(text);
      setDone(copying.copied);
    } catch {
      setDone(copiedTheOldWay() ? copying.copied : copying.selected);
    }
  }

  return (
    <div class="field copy-line">
      <label for={id}>{label}</label>
      <span class="field-line">
        <textarea
          ref={field}
          id={id}
          class="input copy-text"
          readOnly
          rows={text.split('\n').length}
          value={text}
        />
        <button
          type="button"
          class="button"
          aria-label={copying.copyIt(label)}
          onClick={() => void copy()}
        >
          {copying.copy}
        </button>
      </span>
      <p class="copy-said" role="status">
        {done}
      </p>
    </div>
  );
}

/** Copies what is selected where the newer way is closed; false where neither works. */
function copiedTheOldWay(): boolean {
  try {
    return document.execCommand('copy');
  } catch {
    return false;
  }
}
