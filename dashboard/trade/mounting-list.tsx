import type { Batch } from '../../daemon/contract/batch.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';

type Move = Batch['moves'][number];

/** What is done on the day boards go up, to tick. */
export function MountingList({ batch, onChanged }: { batch: Batch; onChanged: () => void }) {
  const { calendar } = useShed();
  const up = batch.moves.filter((move) => move.mounting !== null).at(-1);
  if (!up || up.placeId !== batch.placeId) return null;
  return (
    <section class="mounting" aria-labelledby="mounting-title">
      <h2 id="mounting-title">Going up</h2>
      <p class="quiet">
        {up.at === null ? '' : `Up since ${calendar.exact(Date.parse(up.at))}. `}Later coats on the
        wall: follow the shade, stop before evening dew.
      </p>
      <Lines batch={batch} move={up} onChanged={onChanged} />
    </section>
  );
}

function Lines({ batch, move, onChanged }: { batch: Batch; move: Move; onChanged: () => void }) {
  const { api, live, calendar } = useShed();
  const sending = useSending();

  async function tick(line: NonNullable<Move['mounting']>[number]): Promise<void> {
    const body = {
      line: line.line,
      at: new Date(live.now.peek()).toISOString(),
      done: line.at === null,
    };
    const params = { id: batch.id, part: move.id };
    const reply = await sending.send(() => api.call('tickMounting', { params, body }));
    if (reply !== null) onChanged();
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={async () => {}}>
      <ul class="step-list">
        {move.mounting?.map((line) => (
          <li key={line.line}>
            <button
              type="button"
              class={line.at === null ? 'step' : 'step step-done'}
              aria-pressed={line.at !== null}
              onClick={() => void tick(line)}
            >
              <span>{line.text}</span>
              <span class="step-when">
                {line.at === null ? 'to do' : calendar.exact(Date.parse(line.at))}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </WriteFrame>
  );
}
