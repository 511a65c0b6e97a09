import { useCallback, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coating } from '../../daemon/contract/coating.ts';
import type { Tin } from '../../daemon/contract/tin.ts';
import { about } from '../actions/action-props.ts';
import { likelyTin } from '../actions/coat-guess.ts';
import { listLine, mixtureLine, withinSentence } from '../format/lists.ts';
import { SelectField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { withPendingTicks } from '../offline/pending-ticks.ts';
import { useOwnName } from '../own-name.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { LookAgain } from './look-again.tsx';
import { StillThere } from './still-there.tsx';
import { TickList } from './tick-list.tsx';

/** One coat in steps, for one thumb: begin, tick, finish, look again. */
export function CoatingPage({ id }: { id: string }) {
  const { api } = useShed();
  const { words } = useReader();
  const batch = useReply(useCallback(() => api.call('readBatch', { params: { id } }), [api, id]));
  const coatings = useReply(
    useCallback(() => api.call('listCoatings', { params: { id } }), [api, id]),
  );
  const tins = useReply(useCallback(() => api.call('listTins', {}), [api]));
  if (batch.replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>{words.batch.cannotShow}</h1>
        <ProblemNote problem={batch.replied.problem} />
      </main>
    );
  }
  if (batch.replied.kind === 'loading' || coatings.replied.kind !== 'there') {
    return <main class="page" aria-busy="true" />;
  }
  const known = batch.replied.reply;
  const again = () => {
    batch.again();
    coatings.again();
  };
  const open = coatings.replied.reply.find((one) => one.coatId === null && one.givenUpAt === null);
  const last = coatings.replied.reply.filter((one) => one.coatId !== null).at(-1);
  return (
    <main class="page coating">
      <h1>
        <a href={batchAddress(id)}>{known.name}</a>
      </h1>
      <StillThere batch={known} onMoved={again} />
      {open ? (
        <Steps batch={known} coating={open} onChanged={again} />
      ) : (
        <>
          {last?.look && !last.look.answered && (
            <LookAgain batch={known} look={last.look} onAnswered={again} />
          )}
          <Begin
            batch={known}
            tins={tins.replied.kind === 'there' ? tins.replied.reply : []}
            onBegun={again}
          />
        </>
      )}
    </main>
  );
}

interface BeginProps {
  batch: Batch;
  tins: readonly Tin[];
  onBegun: () => void;
}

function Begin({ batch, tins, onBegun }: BeginProps) {
  const { live } = useShed();
  const { words, figures } = useReader();
  const ownName = useOwnName();
  const { coating, coat } = { ...words.trade, ...words.actions };
  const sending = useSending();
  const on = new Set(batch.coats.map(({ coat }) => coat));
  const open = tins.filter((tin) => tin.emptiedAt === null);
  const [tinId, setTinId] = useState<string | null>(null);
  const index = batch.plan.coats.findIndex((_, at) => !on.has(at));
  const planned = batch.plan.coats[index];
  if (!planned) return <p>{coating.allOn}</p>;

  async function begin(form: FormData): Promise<void> {
    const tinId = textOf(form, 'tinId') || null;
    const begunAt = new Date(live.clock().shedNow).toISOString();
    const begun = await sending.record('beginCoating', about(batch), (id) => ({
      params: { id: batch.id },
      body: { id, coat: index, begunAt, tinId },
    }));
    if (begun !== null) onBegun();
  }

  return (
    <section aria-labelledby="begin-title">
      <h2 id="begin-title">
        {coat.ofPlan(
          figures.number(index + 1),
          figures.number(batch.plan.coats.length),
          ownName(planned.name),
        )}
      </h2>
      <p>{mixtureLine(planned.mixture, words.things)}</p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={begin}>
        <SelectField
          label={coat.tin}
          name="tinId"
          value={tinId ?? likelyTin(batch, open) ?? ''}
          onChange={setTinId}
          pointer="/tinId"
          problem={sending.problem}
        >
          <option value="">{coat.tinNotSaid}</option>
          {open.map((tin) => (
            <option key={tin.id} value={tin.id}>
              {tin.colour === null ? tin.name : coating.tin(tin.name, tin.colour)}
            </option>
          ))}
        </SelectField>
        <button type="submit" class="button button-main button-wide">
          {coating.begin}
        </button>
      </WriteFrame>
    </section>
  );
}

interface StepsProps {
  batch: Batch;
  coating: Coating;
  onChanged: () => void;
}

function Steps({ batch, coating, onChanged }: StepsProps) {
  const { live, outbox } = useShed();
  const { words, locale, say } = useReader();
  const ownName = useOwnName();
  const { coating: said, coat } = { ...words.trade, ...words.actions };
  const sending = useSending();
  const [asked, setAsked] = useState(false);
  const params = { id: batch.id, part: coating.id };
  const nowText = () => new Date(live.clock().shedNow).toISOString();
  const steps = withPendingTicks(
    coating.steps,
    outbox.entries.value,
    'tickCoating',
    coating.id,
    'step',
  );

  async function tick({ step, at }: (typeof steps)[number]): Promise<void> {
    const body = { step, at: nowText(), done: at === null };
    const reply = await sending.record('tickCoating', about(batch), () => ({ params, body }));
    if (reply !== null) onChanged();
  }

  async function end(finishedAt: string | null, usedL: number | null): Promise<void> {
    const reply = await sending.record('endCoating', about(batch), (id) => ({
      params,
      body: finishedAt === null ? { finishedAt } : { coatId: id, finishedAt, usedL },
    }));
    if (reply === null) return;
    await live.refresh();
    onChanged();
  }

  const open = steps.filter((step) => step.at === null);
  return (
    <section aria-labelledby="steps-title">
      <h2 id="steps-title">{ownName(coating.name)}</h2>
      <p class="quiet">{said.begun(<PaintersMoment at={Date.parse(coating.begunAt)} />)}</p>
      <WriteFrame
        problem={sending.problem}
        busy={sending.busy}
        onSend={(form) => end(nowText(), optionalNumberOf(form, 'usedL'))}
      >
        <TickList
          lines={steps.map((step) => ({ ...step, key: step.step, text: say(step) }))}
          onTick={(step) => void tick(step)}
        />
        <MeasureField
          label={coat.used}
          name="usedL"
          measure="litres"
          pointer="/usedL"
          problem={sending.problem}
          hint={said.learns}
        />
        <button type="submit" class="button button-main button-wide button-thumb">
          {said.lastBoard}
        </button>
        {open.length > 0 && (
          <p class="quiet">
            {said.open(
              listLine(
                open.map((step) => withinSentence(say(step), locale)),
                locale,
              ),
            )}
          </p>
        )}
        {asked ? (
          <button type="button" class="button" onClick={() => void end(null, null)}>
            {said.giveUpSure}
          </button>
        ) : (
          <button type="button" class="button button-quiet" onClick={() => setAsked(true)}>
            {said.giveUp}
          </button>
        )}
      </WriteFrame>
    </section>
  );
}
