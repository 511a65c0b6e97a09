import { useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import { MoveForm } from '../actions/move-form.tsx';
import { liesLine } from '../format/changes.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

interface StillThereProps {
  batch: Batch;
  onMoved: () => void;
}

/** Where the boards are believed to lie: a forgotten move makes a false verdict. */
export function StillThere({ batch, onMoved }: StillThereProps) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const [correcting, setCorrecting] = useState(false);
  return (
    <div class="still-there">
      <p>
        {liesLine(batch.lies, live.now.value, calendar, words)}{' '}
        <span>{words.trade.stillThere}</span>{' '}
        <button
          type="button"
          class="button button-quiet"
          aria-expanded={correcting}
          onClick={() => setCorrecting(!correcting)}
        >
          {words.trade.moved}
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
