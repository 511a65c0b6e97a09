import { useCallback, useState } from 'preact/hooks';
import type { LockUp } from '../../daemon/contract/lock-up.ts';
import { temperature } from '../format/figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { WhyClosed } from '../forms/write-frame.tsx';
import { printAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** What is seen to before the shed is left on a day of coating. */
export function LockUpPage() {
  const { api, live } = useShed();
  const { replied, again } = useReply(
    useCallback(() => api.call('readLockUp', { query: {} }), [api]),
  );
  const mayWrite = live.overview.value?.mayWrite === true;
  return (
    <main class="page lock-up">
      <h1>Lock up</h1>
      {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
      {replied.kind === 'there' && (
        <LockUpList list={replied.reply} mayWrite={mayWrite} onTicked={again} />
      )}
      <p class="lock-up-card">
        <a class="button" href={printAddress('door')}>
          Print the card for the door
        </a>{' '}
        <span class="quiet">It works when this computer does not.</span>
      </p>
    </main>
  );
}

interface LockUpListProps {
  list: LockUp;
  mayWrite: boolean;
  onTicked: () => void;
}

function LockUpList({ list, mayWrite, onTicked }: LockUpListProps) {
  const [by, setBy] = useState('');
  return (
    <>
      <p class="lead">
        {list.isCoatingDay
          ? list.because.join(' ')
          : 'Nothing was coated or sanded today, as far as anybody recorded it.'}
      </p>
      {list.lines.length > 0 && (
        <>
          <p class="lock-up-proof">
            A tick proves nothing: look at it, touch it. The rags are told again until they are
            ticked.
          </p>
          {!mayWrite && <WhyClosed />}
          <div class="field lock-up-by">
            <label for="lock-up-by">Who looks</label>
            <input
              id="lock-up-by"
              class="input"
              type="text"
              maxLength={80}
              value={by}
              onInput={(event) => setBy(event.currentTarget.value)}
            />
          </div>
          <ul class="lock-up-lines">
            {list.lines.map((line) => (
              <LockUpEntry
                key={line.line}
                line={line}
                by={by}
                mayWrite={mayWrite}
                onTicked={onTicked}
              />
            ))}
          </ul>
        </>
      )}
      <Tonight night={list.night} />
    </>
  );
}

interface LockUpEntryProps {
  line: LockUp['lines'][number];
  by: string;
  mayWrite: boolean;
  onTicked: () => void;
}

function LockUpEntry({ line, by, mayWrite, onTicked }: LockUpEntryProps) {
  const { api, live, calendar } = useShed();
  const sending = useSending();

  async function tick(done: boolean): Promise<void> {
    const told = await sending.send((id) =>
      api.call('tickLockUp', {
        body: { id, line: line.line, done, by: by.trim() === '' ? null : by.trim() },
      }),
    );
    if (told === null) return;
    onTicked();
    await live.refresh();
  }

  return (
    <li class={line.done ? 'lock-up-line lock-up-done' : 'lock-up-line'}>
      <label>
        <input
          type="checkbox"
          checked={line.done}
          disabled={!mayWrite || sending.busy}
          onChange={(event) => void tick(event.currentTarget.checked)}
        />
        <span class="lock-up-title">{line.title}</span>
      </label>
      <p>{line.text}</p>
      {line.at !== null && (
        <p class="quiet">
          {line.by === null ? 'Seen to' : `Seen to by ${line.by}`},{' '}
          {calendar.exact(Date.parse(line.at))}
        </p>
      )}
      <ProblemNote problem={sending.problem} />
    </li>
  );
}

function Tonight({ night }: { night: LockUp['night'] }) {
  const { calendar } = useShed();
  if (night.length === 0) return null;
  return (
    <section class="lock-up-night" aria-labelledby="night-title">
      <h2 id="night-title">Tonight, where wet boards lie</h2>
      {night.map((place) => (
        <div key={place.placeId}>
          <h3>{place.placeName}</h3>
          <p>
            {place.lowC === null || place.lowAt === null
              ? 'The low of this night cannot be told yet: the readings do not reach back far enough.'
              : `Lowest about ${temperature(place.lowC)} (± ${place.lowErrorK?.toFixed(1)} K), ${calendar.exact(Date.parse(place.lowAt))}.`}
          </p>
          {place.atRisk.map((batch) => (
            <p key={batch.batchId} class="lock-up-risk">
              <strong>{batch.name}</strong> is at risk:{' '}
              {batch.reasons.map((reason) => reason.text).join(' ')}
            </p>
          ))}
          {place.atRisk.length === 0 && place.lowC !== null && (
            <p class="quiet">Nothing expected tonight is against them.</p>
          )}
        </div>
      ))}
    </section>
  );
}
