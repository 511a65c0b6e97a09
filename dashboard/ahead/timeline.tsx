import type { AheadBatch, PlanAhead } from '../../daemon/contract/plan-ahead.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { useStripWidth } from '../use-strip-width.ts';
import { plannedDay } from './planned-day.tsx';
import { spreadOf } from './spread.ts';
import {
  type DrawnStep,
  datesOver,
  drawnStep,
  hasRoom,
  linesOf,
  timelineScale,
} from './timeline-scale.ts';

interface TimelineProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** Each batch as a board along the days: a soft band where a job may fall, a kerf where it likely does. */
export function Timeline({ plan, placeName }: TimelineProps) {
  const { words, calendar } = useReader();
  const ownName = useOwnName();
  const { ahead } = words;
  const widthPx = useStripWidth();
  const scale = timelineScale(plan.batches, Date.parse(plan.now));
  const dates = datesOver(scale, widthPx, midnightsBetween);
  return (
    <div class="timeline">
      <div class="timeline-dates" aria-hidden="true">
        {dates
          .filter((at) => hasRoom(at, scale, widthPx))
          .map((at) => (
            <span key={at} style={{ left: `${scale.place(at)}%` }}>
              {calendar.date(at)}
            </span>
          ))}
      </div>
      {plan.batches.map((batch) => {
        const steps = batch.steps.flatMap((step) => {
          const drawn = drawnStep(step.begins, scale);
          const text = step.kind === 'mount' ? ahead.putUp : ownName(step.name);
          return drawn === null ? [] : [{ step, drawn, text, at: drawn.mark }];
        });
        const lines = linesOf(steps, widthPx);
        return (
          <div class="timeline-row" key={`${batch.batchId} ${batch.lot}`}>
            <p class="timeline-name">
              <BatchName batch={batch} />
            </p>
            <div
              class="timeline-strip"
              aria-hidden="true"
              style={{ height: `${2.1 + 1.25 * (Math.max(0, ...lines) + 1)}rem` }}
            >
              {dates.map((at) => (
                <i key={at} class="timeline-day" style={{ left: `${scale.place(at)}%` }} />
              ))}
              {steps.map(({ step, drawn, text }, i) => (
                <Stroke
                  key={`${step.kind} ${step.coat}`}
                  {...{ drawn, text }}
                  kind={step.kind}
                  line={lines[i] ?? 0}
                  where={placeName(step.placeId)}
                />
              ))}
            </div>
            <p class="timeline-done">
              {ahead.batchDone(spreadOf(batch.done, calendar, plannedDay))}
            </p>
          </div>
        );
      })}
    </div>
  );
}

interface StrokeProps {
  drawn: DrawnStep;
  text: string;
  kind: 'coat' | 'mount';
  line: number;
  where: string;
}

function Stroke({ drawn, text, kind, line, where }: StrokeProps) {
  const { ahead } = useReader().words;
  return (
    <span
      class={`timeline-step timeline-${kind}${drawn.isOpen ? ' timeline-open' : ''}`}
      title={ahead.stepAt(text, where)}
    >
      <i class="timeline-band" style={{ left: `${drawn.from}%`, width: `${drawn.width}%` }} />
      <i class="timeline-kerf" style={{ left: `${drawn.mark}%` }} />
      <b class="timeline-word" style={{ left: `${drawn.mark}%`, top: `${0.3 + 1.25 * line}rem` }}>
        {text}
      </b>
    </span>
  );
}

/** A batch by its name, with its part where it is larger than the racks. */
export function BatchName({ batch }: { batch: AheadBatch }) {
  const { words, figures } = useReader();
  const { ahead, things } = words;
  const boards = things.boards(batch.boards);
  return (
    <>
      {batch.batchId === null ? (
        <strong>{ahead.askedAbout}</strong>
      ) : (
        <a href={batchAddress(batch.batchId)}>{batch.name}</a>
      )}
      <small class="ahead-small">
        {batch.lots > 1
          ? ahead.boardsInPart(boards, figures.number(batch.lot + 1), figures.number(batch.lots))
          : boards}
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
