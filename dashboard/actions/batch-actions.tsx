import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate, VerdictWord } from '../../daemon/contract/gate.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import type { Words } from '../words/words.ts';
import type { ActionProps } from './action-props.ts';
import { CloseForm } from './close-form.tsx';
import { CoatForm } from './coat-form.tsx';
import { MergeForm } from './merge-form.tsx';
import { MeterForm } from './meter-form.tsx';
import { MoveForm } from './move-form.tsx';
import { type NextAction, nextAction } from './next-action.ts';
import { PhotoForm } from './photo-form.tsx';
import { RemarkForm } from './remark-form.tsx';
import { SplitForm } from './split-form.tsx';
import { TouchForm } from './touch-form.tsx';

type Action = keyof Words['actions']['names'];

interface BatchActionsProps {
  batch: Batch;
  nextGate: Gate | null;
  verdict: VerdictWord | null;
  onRecorded: () => void;
}

/** Which form what is to do now opens; null where it stands on the page already. */
const formOf: Readonly<Record<NextAction['kind'], Action | null>> = {
  'first-coat': 'coat',
  'next-coat': 'coat',
  touch: null,
  move: 'move',
  sanded: 'remark',
  close: 'close',
  reopen: 'close',
};

/** What can be done with a batch; one form opens at a time. */
export function BatchActions({ batch, nextGate, verdict, onRecorded }: BatchActionsProps) {
  const { actions: words } = useReader().words;
  const ownName = useOwnName();
  const [open, setOpen] = useState<Action | null>(null);
  const [said, setSaid] = useState<ComponentChildren>('');
  const form = useRef<HTMLDivElement>(null);
  // On a phone the form opens below the fold: the second tap must not need a search.
  useEffect(() => {
    if (open !== null) form.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const next = nextAction(batch, nextGate, verdict);
  const main = formOf[next.kind];
  const offered: Action[] = [
    ...(batch.coats.length > 0 ? (['touch'] as const) : []),
    'coat',
    'photo',
    'remark',
    'move',
    'meter',
    ...(batch.boards.count > 1 ? (['split'] as const) : []),
    'merge',
    'close',
  ];
  const others = offered.filter((action) => action !== main);
  const props: ActionProps = {
    batch,
    onDone(text) {
      setSaid(text);
      if (open !== 'coat') setOpen(null);
      onRecorded();
    },
  };
  const button = (action: Action, label: string, look: string) => (
    <button
      key={action}
      type="button"
      class={look}
      aria-expanded={open === action}
      onClick={() => {
        setSaid('');
        setOpen(open === action ? null : action);
      }}
    >
      {label}
    </button>
  );
  return (
    <section class="actions" aria-label={words.label}>
      <div class="action-row">
        {main !== null &&
          button(main, mainWords(next, words, ownName), 'button button-main button-thumb')}
        {others.map((action) => button(action, words.names[action], 'button'))}
      </div>
      <div class="action-said" role="status">
        {said}
      </div>
      {open !== null && (
        <div class="action-form" ref={form}>
          {open === 'touch' && (
            <TouchForm {...props} nextGate={nextGate} onMoved={onRecorded} onSent={onRecorded} />
          )}
          {open === 'coat' && (
            <CoatForm {...props} onMoved={onRecorded} onClose={() => setOpen(null)} />
          )}
          {open === 'move' && <MoveForm {...props} />}
          {open === 'split' && <SplitForm {...props} />}
          {open === 'merge' && <MergeForm {...props} />}
          {open === 'remark' && (
            <RemarkForm {...props} first={next.kind === 'sanded' ? 'sanded' : 'got-wet'} />
          )}
          {open === 'photo' && <PhotoForm {...props} />}
          {open === 'meter' && <MeterForm {...props} />}
          {open === 'close' && <CloseForm {...props} />}
        </div>
      )}
    </section>
  );
}

function mainWords(
  next: NextAction,
  { next: words, close }: Words['actions'],
  ownName: (name: string) => string,
): string {
  switch (next.kind) {
    case 'first-coat':
      return words.first(ownName(next.coat));
    case 'next-coat':
      return words.coat(ownName(next.coat));
    case 'move':
      return words.move;
    case 'sanded':
      return words.sanded;
    case 'reopen':
      return close.open;
    default:
      return close.close;
  }
}
