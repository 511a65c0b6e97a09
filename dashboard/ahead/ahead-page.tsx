import { useCallback, useState } from 'preact/hooks';
import type { PlanAheadQuery } from '../../daemon/contract/plan-ahead.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { spreadWords } from '../words/ahead-words.ts';
import { AskForm } from './ask-form.tsx';
import { LastStarts } from './last-starts.tsx';
import { StepTable } from './step-table.tsx';
import { Timeline } from './timeline.tsx';

/** What is to be done when, how sure that is, and by when a coat must be begun before winter. */
export function AheadPage() {
  const { api, live, calendar } = useShed();
  const [asked, setAsked] = useState<PlanAheadQuery>({});
  const { replied } = useReply(
    useCallback(() => api.call('planAhead', { query: asked }), [api, asked]),
  );
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>What comes</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const plan = replied.reply;
  const places = new Map(live.overview.value?.places.map((place) => [place.id, place.name]) ?? []);
  const placeName = (id: string) => places.get(id) ?? 'another place';
  return (
    <main class="page ahead">
      <h1>What comes</h1>
      {plan.done === null ? (
        <p class="lead">
          Nothing is waiting: no batch has a coat to come. Start a batch, or ask below about boards
          that are still to be delivered.
        </p>
      ) : (
        <p class="lead">
          All {plan.done.boards} boards are done {spreadWords(plan.done, calendar)}.
        </p>
      )}
      {plan.batches.length > 0 && (
        <>
          <Timeline plan={plan} placeName={placeName} />
          <OrderNote order={plan.order} />
        </>
      )}
      <div class="setup-columns">
        <section class="panel" aria-labelledby="ask-title">
          <h2 id="ask-title">And how many more?</h2>
          <AskForm asked={asked} onAsk={setAsked} />
        </section>
        <section class="panel" aria-labelledby="winter-title">
          <h2 id="winter-title">Before winter</h2>
          <LastStarts plan={plan} placeName={placeName} />
        </section>
      </div>
      {plan.batches.length > 0 && <StepTable plan={plan} placeName={placeName} />}
      <section class="panel" aria-labelledby="follow-title">
        <h2 id="follow-title">On your phone’s calendar</h2>
        <p>
          Follow <a href="/api/v1/plan-ahead.ics">this calendar</a> by its address, and it stays up
          to date while the phone is on this network:{' '}
          <code>{location.origin}/api/v1/plan-ahead.ics</code>
        </p>
      </section>
      <p class="batch-report">
        <a href="#/season">What became of the coats so far: the seasons</a>
      </p>
      <section class="panel" aria-labelledby="rests-title">
        <h2 id="rests-title">What this rests on</h2>
        <ul class="grounds">
          {plan.grounds.map((ground) => (
            <li key={ground.code + ground.text}>{ground.text}</li>
          ))}
        </ul>
      </section>
    </main>
  );
}

function OrderNote({ order }: { order: { gapDays: number | null; tried: number } | null }) {
  if (order === null || order.gapDays === null || order.tried < 2) return null;
  const days = order.gapDays;
  return (
    <p class="footnote">
      The batches stand in the order in which they are served. {order.tried} ways were compared;{' '}
      {days < 0.5
        ? 'none could be done earlier by half a day.'
        : `no order can be done more than ${days.toFixed(days < 10 ? 1 : 0)} days earlier than this one.`}
    </p>
  );
}
