import { useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import { MoveForm } from '../actions/move-form.tsx';
import { useShed } from '../shed-context.ts';
import { liesWords } from '../words/trade-words.ts';

interface StillThereProps {
  batch: Batch;
  onMoved: () => void;
}

/** Where the boards are believed to lie: a forgotten move makes a false verdict. */
export function StillThere({ batch, onMoved }: StillThereProps) {
  const { live, calendar } = useShed();
  const [correcting, setCorrecting] = useState(false);
  return (
    <div class="still-there">
      <p>
        The boards lie {liesWords(batch.lies, live.now.value, calendar)}. <span>Still there?</span>{' '}
        <button
          type="button"
          class="button button-quiet"
          aria-expanded={correcting}
          onClick={() => setCorrecting(!correcting)}
        >
          No, they were moved
        </button>
      </p>
      {correcting && (
        <MoveForm
          batch={batch}
          onDone={() => {
            setCorrecting(false);
            onMoved();
          }}
        />
      )}
    </div>
  );
}
