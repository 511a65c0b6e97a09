import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import type { ActionProps } from './action-props.ts';
import { CloseForm } from './close-form.tsx';
import { CoatForm } from './coat-form.tsx';
import { MeterForm } from './meter-form.tsx';
import { MoveForm } from './move-form.tsx';
import { PhotoForm } from './photo-form.tsx';
import { RemarkForm } from './remark-form.tsx';
import { TouchForm } from './touch-form.tsx';

type Action = 'touch' | 'coat' | 'move' | 'remark' | 'photo' | 'meter' | 'close';

const words: Readonly<Record<Action, string>> = {
  touch: 'I felt it',
  coat: 'Record a coat',
  move: 'Moved',
  remark: 'Remark',
  photo: 'Photo',
  meter: 'Hand meter',
  close: 'Close',
};

interface BatchActionsProps {
  batch: Batch;
  nextGate: Gate | null;
  onRecorded: () => void;
}

/** What can be done with a batch; one form opens at a time. */
export function BatchActions({ batch, nextGate, onRecorded }: BatchActionsProps) {
  const [open, setOpen] = useState<Action | null>(null);
  const [said, setSaid] = useState('');
  const form = useRef<HTMLDivElement>(null);
  // On a phone the form opens below the fold: the second tap must not need a search.
  useEffect(() => {
    if (open !== null) form.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const hasCoat = batch.coats.length > 0;
  const actions: Action[] = [
    ...(hasCoat ? (['touch'] as const) : []),
    'coat',
    'move',
    'remark',
    'photo',
    'meter',
    'close',
  ];
  const main: Action = hasCoat ? 'touch' : 'coat';
  const props: ActionProps = {
    batch,
    onDone(text) {
      setSaid(text);
      if (open !== 'coat') setOpen(null);
      onRecorded();
    },
  };
  return (
    <section class="actions" aria-label="What to record">
      <div class="action-row">
        {actions.map((action) => (
          <button
            key={action}
            type="button"
            class={action === main ? 'button button-main' : 'button'}
            aria-expanded={open === action}
            onClick={() => {
              setSaid('');
              setOpen(open === action ? null : action);
            }}
          >
            {words[action]}
          </button>
        ))}
      </div>
      <p class="action-said" role="status">
        {said}
      </p>
      {open !== null && (
        <div class="action-form" ref={form}>
          {open === 'touch' && <TouchForm {...props} nextGate={nextGate} />}
          {open === 'coat' && <CoatForm {...props} onClose={() => setOpen(null)} />}
          {open === 'move' && <MoveForm {...props} />}
          {open === 'remark' && <RemarkForm {...props} />}
          {open === 'photo' && <PhotoForm {...props} />}
          {open === 'meter' && <MeterForm {...props} />}
          {open === 'close' && <CloseForm {...props} />}
        </div>
      )}
    </section>
  );
}
