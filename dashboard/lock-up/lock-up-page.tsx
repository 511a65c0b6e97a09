import { useCallback, useState } from 'preact/hooks';
import type { LockUp } from '../../daemon/contract/lock-up.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { WhyClosed } from '../forms/write-frame.tsx';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { printAddress } from '../router.ts';
import { Said, SaidAll } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** What is seen to before the shed is left on a day of coating. */
export function LockUpPage() {
  const { api, live } = useShed();
  const { replied, again } = useReply(
    useCallback(() => api.call('readLockUp', { query: {} }), [api]),
  );
  const mayWrite = live.overview.value?.mayWrite === true;
  const { lockUp } = useReader().words;
  return (
    <main class="page lock-up">
      <h1>{lockUp.title}</h1>
      {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
      {replied.kind === 'there' && (
        <LockUpList list={replied.reply} mayWrite={mayWrite} onTicked={again} />
      )}
      <p class="lock-up-card">
        <a class="button" href={printAddress('door')}>
          {lockUp.printCard}
        </a>{' '}
        <span class="quiet">{lockUp.cardWorks}</span>
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
  const { lockUp } = useReader().words;
  return (
    <>
      <p class="lead">
        {list.isCoatingDay ? <SaidAll sentences={list.becauseSaid} /> : lockUp.noCoatingDay}
      </p>
      {list.lines.length > 0 && (
        <>
          <p class="lock-up-proof">{lockUp.tickProves}</p>
          {!mayWrite && <WhyClosed />}
          <div class="field lock-up-by">
            <label for="lock-up-by">{lockUp.whoLooks}</label>
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
  const { api, live } = useShed();
  const { lockUp } = useReader().words;
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
          disabled={!mayWrite}
          aria-disabled={sending.busy}
          onChange={(event) => void tick(event.currentTarget.checked)}
        />
        <span class="lock-up-title">
          <Said sentence={line.titleSaid} />
        </span>
      </label>
      <p>
        <Said sentence={line} />
      </p>
      {line.at !== null && (
        <p class="quiet">
          {line.by === null
            ? lockUp.seenTo(<PaintersMoment at={Date.parse(line.at)} />)
            : lockUp.seenToBy(line.by, <PaintersMoment at={Date.parse(line.at)} />)}
        </p>
      )}
      <ProblemNote problem={sending.problem} />
    </li>
  );
}

function Tonight({ night }: { night: LockUp['night'] }) {
  const { words, figures } = useReader();
  const { night: said } = words.lockUp;
  if (night.length === 0) return null;
  return (
    <section class="lock-up-night" aria-labelledby="night-title">
      <h2 id="night-title">{said.title}</h2>
      {night.map((place) => (
        <div key={place.placeId}>
          <h3>{place.placeName}</h3>
          <p>
            {place.lowC === null || place.lowAt === null
              ? said.noLow
              : said.low(
                  figures.temperature(place.lowC),
                  figures.temperatureDifference(place.lowErrorK),
                  <PaintersMoment at={Date.parse(place.lowAt)} />,
                )}
          </p>
          {place.atRisk.map((batch) => (
            <p key={batch.batchId} class="lock-up-risk">
              {said.atRisk(<strong>{batch.name}</strong>, <SaidAll sentences={batch.reasons} />)}
            </p>
          ))}
          {place.atRisk.length === 0 && place.lowC !== null && <p class="quiet">{said.nothing}</p>}
        </div>
      ))}
    </section>
  );
}
