import { useCallback, useState } from 'preact/hooks';
import type { PlanAhead, PlanAheadQuery } from '../../daemon/contract/plan-ahead.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AskForm } from './ask-form.tsx';
import { LastStarts } from './last-starts.tsx';
import { plannedDay } from './planned-day.tsx';
import { spreadOf } from './spread.ts';
import { StepTable } from './step-table.tsx';
import { Timeline } from './timeline.tsx';

const calendarPath = '/api/v1/plan-ahead.ics';

/** What is to be done when, how sure that is, and by when a coat must be begun before winter. */
export function AheadPage() {
  const { api, live } = useShed();
  const { words, calendar } = useReader();
  const { ahead } = words;
  const [asked, setAsked] = useState<PlanAheadQuery>({});
  const { replied } = useReply(
    useCallback(() => api.call('planAhead', { query: asked }), [api, asked]),
  );
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>{ahead.title}</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const plan = replied.reply;
  const places = new Map(live.overview.value?.places.map((place) => [place.id, place.name]) ?? []);
  const placeName = (id: string) => places.get(id) ?? ahead.anotherPlace;
  return (
    <main class="page ahead">
      <h1>{ahead.title}</h1>
      {plan.done === null ? (
        <p class="lead">{ahead.nothingWaits}</p>
      ) : (
        <p class="lead">
          {ahead.allDone(plan.done.boards, spreadOf(plan.done, calendar, plannedDay))}
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
          <h2 id="ask-title">{ahead.ask.title}</h2>
          <AskForm asked={asked} onAsk={setAsked} />
        </section>
        <section class="panel" aria-labelledby="winter-title">
          <h2 id="winter-title">{ahead.winter.title}</h2>
          <LastStarts plan={plan} placeName={placeName} />
        </section>
      </div>
      {plan.batches.length > 0 && <StepTable plan={plan} placeName={placeName} />}
      <section class="panel" aria-labelledby="follow-title">
        <h2 id="follow-title">{ahead.follow.title}</h2>
        <p>
          {ahead.follow.how(
            <a href={calendarPath}>{ahead.follow.link}</a>,
            <code>{`${location.origin}${calendarPath}`}</code>,
          )}
        </p>
      </section>
      <p class="batch-report">
        <a href="#/season">{ahead.seasons}</a>
      </p>
      <section class="panel" aria-labelledby="rests-title">
        <h2 id="rests-title">{ahead.restsOn}</h2>
        <ul class="grounds">
          {plan.grounds.map((ground) => (
            <li key={ground.code + ground.text}>
              <Said sentence={ground} />
            </li>
          ))}
        </ul>
      </section>
    </main>
  );
}

function OrderNote({ order }: { order: PlanAhead['order'] }) {
  const words = useReader().words.ahead.order;
  if (order === null || order.gapDays === null || order.tried < 2) return null;
  const days = order.gapDays;
  return (
    <p class="footnote">
      {days < 0.5
        ? words.none(order.tried)
        : words.gap(order.tried, days < 10 ? Math.round(days * 10) / 10 : Math.round(days))}
    </p>
  );
}
