import type { AheadBatch, AheadStep, PlanAhead } from '../../daemon/contract/plan-ahead.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { spreadWords } from '../words/ahead-words.ts';
import { datesOver, drawnStep, type Scale, timelineScale } from './timeline-scale.ts';

interface TimelineProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** Each batch as a board along the days: a soft band where a job may fall, a kerf where it likely does. */
export function Timeline({ plan, placeName }: TimelineProps) {
  const { calendar } = useShed();
  const scale = timelineScale(plan.batches, Date.parse(plan.now));
  const dates = datesOver(scale, (from, to) => midnightsBetween(from, to));
  return (
    <div class="timeline">
      <div class="timeline-dates" aria-hidden="true">
        {dates.map((at) => (
          <span key={at} style={{ left: `${scale.place(at)}%` }}>
            {calendar.date(at)}
          </span>
        ))}
      </div>
      {plan.batches.map((batch) => (
        <div class="timeline-row" key={`${batch.batchId} ${batch.lot}`}>
          <p class="timeline-name">
            <BatchName batch={batch} />
          </p>
          <div class="timeline-strip" aria-hidden="true">
            {dates.map((at) => (
              <i key={at} class="timeline-day" style={{ left: `${scale.place(at)}%` }} />
            ))}
            {batch.steps.map((step) => (
              <Stroke
                key={`${step.kind} ${step.coat}`}
                step={step}
                scale={scale}
                where={placeName(step.placeId)}
              />
            ))}
          </div>
          <p class="timeline-done">Done {spreadWords(batch.done, calendar)}</p>
        </div>
      ))}
    </div>
  );
}

function Stroke({ step, scale, where }: { step: AheadStep; scale: Scale; where: string }) {
  const drawn = drawnStep(step.begins, scale);
  if (drawn === null) return null;
  const what = step.kind === 'mount' ? 'Put up' : step.name;
  return (
    <span
      class={`timeline-step timeline-${step.kind}${drawn.isOpen ? ' timeline-open' : ''}`}
      title={`${what}, ${where}`}
    >
      <i class="timeline-band" style={{ left: `${drawn.from}%`, width: `${drawn.width}%` }} />
      <i class="timeline-kerf" style={{ left: `${drawn.mark}%` }} />
      <b
        class={drawn.mark > 80 ? 'timeline-word timeline-word-before' : 'timeline-word'}
        style={{ left: `${drawn.mark}%` }}
      >
        {what}
      </b>
    </span>
  );
}

/** A batch by its name, with its part where it is larger than the racks. */
export function BatchName({ batch }: { batch: AheadBatch }) {
  const part = batch.lots > 1 ? `, part ${batch.lot + 1} of ${batch.lots}` : '';
  return (
    <>
      {batch.batchId === null ? (
        <strong>The boards you asked about</strong>
      ) : (
        <a href={batchAddress(batch.batchId)}>{batch.name}</a>
      )}
      <small>
        {batch.boards} boards{part}
      </small>
    </>
  );
}

/** Midnights of the device’s own calendar. */
function midnightsBetween(from: number, to: number): number[] {
  const day = new Date(from);
  day.setHours(24, 0, 0, 0);
  const found: number[] = [];
  for (; day.getTime() < to; day.setDate(day.getDate() + 1)) found.push(day.getTime());
  return found;
}
