import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import type { ActionProps } from './action-props.ts';
import { CloseForm } from './close-form.tsx';
import { CoatForm } from './coat-form.tsx';
import { MergeForm } from './merge-form.tsx';
import { MeterForm } from './meter-form.tsx';
import { MoveForm } from './move-form.tsx';
import { PhotoForm } from './photo-form.tsx';
import { RemarkForm } from './remark-form.tsx';
import { SplitForm } from './split-form.tsx';
import { TouchForm } from './touch-form.tsx';

type Action =
  | 'touch'
  | 'coat'
  | 'move'
  | 'split'
  | 'merge'
  | 'remark'
  | 'photo'
  | 'meter'
  | 'close';

const words: Readonly<Record<Action, string>> = {
  touch: 'I felt it',
  coat: 'Record a coat',
  move: 'Moved',
  split: 'Some went',
  merge: 'Put together',
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
  const [said, setSaid] = useState<ComponentChildren>('');
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
    ...(batch.boards.count > 1 ? (['split'] as const) : []),
    'merge',
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
      <div class="action-said" role="status">
        {said}
      </div>
      {open !== null && (
        <div class="action-form" ref={form}>
          {open === 'touch' && <TouchForm {...props} nextGate={nextGate} onMoved={onRecorded} />}
          {open === 'coat' && (
            <CoatForm {...props} onMoved={onRecorded} onClose={() => setOpen(null)} />
          )}
          {open === 'move' && <MoveForm {...props} />}
          {open === 'split' && <SplitForm {...props} />}
          {open === 'merge' && <MergeForm {...props} />}
          {open === 'remark' && <RemarkForm {...props} />}
          {open === 'photo' && <PhotoForm {...props} />}
          {open === 'meter' && <MeterForm {...props} />}
          {open === 'close' && <CloseForm {...props} />}
        </div>
      )}
    </section>
  );
}
