import { useState } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import type { Words } from '../words/words.ts';
import { CorrectForm } from './correct-form.tsx';
import type { Entry } from './entry.ts';

interface WaitingEntryProps {
  entry: Entry;
  /** Whether one before it, about the same batch, was refused. */
  isHeldUp: boolean;
  /** Whether the list stands under a heading of its own. */
  isWithin?: boolean;
}

/** One entry: what it is, whether it waits or was refused, and what can be done about it. */
export function WaitingEntry({ entry, isHeldUp, isWithin = false }: WaitingEntryProps) {
  const { outbox } = useShed();
  const { words } = useReader();
  const { offline } = words;
  const [isAsked, setAsked] = useState(false);
  const Heading = isWithin ? 'h3' : 'h2';
  const { refused } = entry;
  const standing = refused !== null ? offline.refused : isHeldUp ? offline.heldUp : offline.waits;
  return (
    <li class={refused === null ? 'waiting-entry' : 'waiting-entry waiting-refused'}>
      <Heading>{offline.names[entry.name]}</Heading>
      <p>
        {entry.batchName} · <PaintersMoment at={entry.enteredAt} />
      </p>
      <p>{whatIs(entry, words)}</p>
      <p>
        <strong>{standing}</strong>
      </p>
      {refused !== null && (
        <>
          <ProblemNote problem={refused} />
          <CorrectForm entry={entry} problem={refused} />
        </>
      )}
      <p class="action-row">
        {isAsked ? (
          <button type="button" class="button" onClick={() => void outbox.takeBack(entry.id)}>
            {offline.dropSure}
          </button>
        ) : (
          <button type="button" class="button" onClick={() => setAsked(true)}>
            {offline.drop}
          </button>
        )}
      </p>
    </li>
  );
}

/** What was entered, as far as a few words tell it. */
function whatIs({ name, given: { body } }: Entry, { jobs, things }: Words): string | null {
  if (name === 'createTest') {
    const job = jobs[body.gate as keyof typeof jobs];
    return body.passed === true ? job.passed : job.failed;
  }
  if (name === 'createRemark') {
    return things.remarks[body.kind as keyof typeof things.remarks];
  }
  return typeof body.text === 'string' ? body.text : null;
}
