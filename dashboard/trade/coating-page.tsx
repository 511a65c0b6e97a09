import { useCallback, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coating } from '../../daemon/contract/coating.ts';
import type { Tin } from '../../daemon/contract/tin.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { mixtureWords } from '../words/thing-words.ts';
import { LookAgain } from './look-again.tsx';
import { StillThere } from './still-there.tsx';

/** One coat in steps, for one thumb: begin, tick, finish, look again. */
export function CoatingPage({ id }: { id: string }) {
  const { api } = useShed();
  const batch = useReply(useCallback(() => api.call('readBatch', { params: { id } }), [api, id]));
  const coatings = useReply(
    useCallback(() => api.call('listCoatings', { params: { id } }), [api, id]),
  );
  const tins = useReply(useCallback(() => api.call('listTins', {}), [api]));
  if (batch.replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>This batch cannot be shown</h1>
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
  const { api, live } = useShed();
  const sending = useSending();
  const on = new Set(batch.coats.map(({ coat }) => coat));
  const index = batch.plan.coats.findIndex((_, at) => !on.has(at));
  const planned = batch.plan.coats[index];
  if (!planned) return <p>All coats of the plan are on.</p>;

  async function begin(form: FormData): Promise<void> {
    const tinId = textOf(form, 'tinId') || null;
    const begun = await sending.send((id) =>
      api.call('beginCoating', {
        params: { id: batch.id },
        body: { id, coat: index, begunAt: new Date(live.now.peek()).toISOString(), tinId },
      }),
    );
    if (begun !== null) onBegun();
  }

  return (
    <section aria-labelledby="begin-title">
      <h2 id="begin-title">
        {index + 1} of {batch.plan.coats.length}: {planned.name}
      </h2>
      <p>{mixtureWords(planned.mixture)}</p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={begin}>
        <SelectField
          label="Out of which tin"
          name="tinId"
          pointer="/tinId"
          problem={sending.problem}
        >
          <option value="">not said</option>
          {tins
            .filter((tin) => tin.emptiedAt === null)
            .map((tin) => (
              <option key={tin.id} value={tin.id}>
                {tin.name}
                {tin.colour === null ? '' : `, ${tin.colour}`}
              </option>
            ))}
        </SelectField>
        <button type="submit" class="button button-main button-wide">
          Begin this coat
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
  const { api, live, calendar } = useShed();
  const sending = useSending();
  const [asked, setAsked] = useState(false);
  const params = { id: batch.id, part: coating.id };
  const nowText = () => new Date(live.now.peek()).toISOString();

  async function tick(step: Coating['steps'][number]): Promise<void> {
    const body = { step: step.step, at: nowText(), done: step.at === null };
    const reply = await sending.send(() => api.call('tickCoating', { params, body }));
    if (reply !== null) onChanged();
  }

  async function end(finishedAt: string | null, usedL: number | null): Promise<void> {
    const reply = await sending.send((id) => {
      const body = finishedAt === null ? { finishedAt } : { coatId: id, finishedAt, usedL };
      return api.call('endCoating', { params, body });
    });
    if (reply === null) return;
    await live.refresh();
    onChanged();
  }

  const open = coating.steps.filter((step) => step.at === null);
  return (
    <section aria-labelledby="steps-title">
      <h2 id="steps-title">{coating.name}</h2>
      <p class="quiet">Begun {calendar.exact(Date.parse(coating.begunAt))}</p>
      <WriteFrame
        problem={sending.problem}
        busy={sending.busy}
        onSend={(form) => end(nowText(), optionalNumberOf(form, 'usedL'))}
      >
        <ul class="step-list">
          {coating.steps.map((step) => (
            <li key={step.step}>
              <button
                type="button"
                class={step.at === null ? 'step' : 'step step-done'}
                aria-pressed={step.at !== null}
                onClick={() => void tick(step)}
              >
                <span>{step.text}</span>
                <span class="step-when">
                  {step.at === null ? 'to do' : calendar.exact(Date.parse(step.at))}
                </span>
              </button>
            </li>
          ))}
        </ul>
        <TextField
          label="Used"
          name="usedL"
          kind="number"
          unit="L"
          pointer="/usedL"
          problem={sending.problem}
          hint="The plan learns from it how far a litre goes"
        />
        <button type="submit" class="button button-main button-wide">
          The last board is done
        </button>
        {open.length > 0 && (
          <p class="quiet">
            Not ticked yet: {open.map(({ text }) => text.toLowerCase()).join('; ')}.
          </p>
        )}
        {asked ? (
          <button type="button" class="button" onClick={() => void end(null, null)}>
            Yes, give this coat up
          </button>
        ) : (
          <button type="button" class="button button-quiet" onClick={() => setAsked(true)}>
            It was not put on
          </button>
        )}
      </WriteFrame>
    </section>
  );
}
