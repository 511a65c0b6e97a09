import { useRef, useState } from 'preact/hooks';
import { useReader } from '../reader.ts';

interface CopyLineProps {
  label: string;
  text: string;
}

/** A line, or several, to be taken into another program. */
export function CopyLine({ label, text }: CopyLineProps) {
  const { copying } = useReader().words;
  const [done, setDone] = useState('');
  const line = useRef<HTMLElement>(null);

  async function copy(): Promise<void> {
    if (line.current !== null) getSelection()?.selectAllChildren(line.current);
    try {
      // Browsers hand the clipboard only to pages over TLS, and a shed’s pages seldom are.
      await navigator.clipboard.writeText(text);
      setDone(copying.copied);
    } catch {
      setDone(copiedTheOldWay() ? copying.copied : copying.selected);
    }
  }

  return (
    <div class="copy-line">
      <p class="copy-label">{label}</p>
      <div class="field-line">
        <code ref={line} class="copy-text">
          {text}
        </code>
        <button
          type="button"
          class="button"
          aria-label={copying.copyIt(label)}
          onClick={() => void copy()}
        >
          {copying.copy}
        </button>
      </div>
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
