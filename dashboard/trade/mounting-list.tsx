import type { Batch } from '../../daemon/contract/batch.ts';
import { about } from '../actions/action-props.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { withPendingTicks } from '../offline/pending-ticks.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { TickList } from './tick-list.tsx';

type Move = Batch['moves'][number];

/** What is done on the day boards go up, to tick. */
export function MountingList({ batch, onChanged }: { batch: Batch; onChanged: () => void }) {
  const { mounting } = useReader().words.trade;
  const up = batch.moves.filter((move) => move.mounting !== null).at(-1);
  if (!up || up.placeId !== batch.placeId) return null;
  return (
    <section class="mounting" aria-labelledby="mounting-title">
      <h2 id="mounting-title">{mounting.title}</h2>
      {up.at !== null && (
        <p class="quiet">{mounting.upSince(<PaintersMoment at={Date.parse(up.at)} />)}</p>
      )}
      <p class="quiet">{mounting.shade}</p>
      <p class="from-the-ground">{mounting.fromTheGround}</p>
      <Lines batch={batch} move={up} onChanged={onChanged} />
    </section>
  );
}

function Lines({ batch, move, onChanged }: { batch: Batch; move: Move; onChanged: () => void }) {
  const { live, outbox } = useShed();
  const { say } = useReader();
  const sending = useSending();
  const lines = withPendingTicks(
    move.mounting ?? [],
    outbox.entries.value,
    'tickMounting',
    move.id,
    'line',
  );

  async function tick(line: (typeof lines)[number]): Promise<void> {
    const at = new Date(live.clock().shedNow).toISOString();
    const body = { line: line.line, at, done: line.at === null };
    const params = { id: batch.id, part: move.id };
    const reply = await sending.record('tickMounting', about(batch), () => ({ params, body }));
    if (reply !== null) onChanged();
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={async () => {}}>
      <TickList
        lines={lines.map((line) => ({
          ...line,
          key: line.line,
          text: say(line),
        }))}
        onTick={(line) => void tick(line)}
      />
    </WriteFrame>
  );
}
