import type { Gate, GateVerdict } from '../../daemon/contract/gate.ts';
import { weekStrip } from '../format/week-strip.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

const WEEK_MS = 604_800_000;

/** When a job is due, as a strip of half-days and as a sentence. */
export function WeekStrip({ verdict, gate }: { verdict: GateVerdict; gate: Gate }) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const { week } = words.trade.round;
  const now = live.now.value;
  const job = words.jobs[gate].infinitive;
  const likely = verdict.likely === null ? null : Date.parse(verdict.likely);
  return (
    <div class="week">
      {/* The same stands below as a sentence. */}
      <ol class="week-strip" aria-hidden="true">
        {weekStrip(verdict, now, calendar).map((half) => (
          <li key={half.at} class={`week-half week-${half.half} week-${half.job}`}>
            {half.half === 'morning' && <span>{calendar.at(half.at).weekday.slice(0, 2)}</span>}
          </li>
        ))}
      </ol>
      <p class="week-words">
        {verdict.verdict !== 'wait'
          ? week.now(job)
          : likely === null || likely - now > WEEK_MS
            ? week.notThisWeek(job)
            : week.likely(job, <PaintersMoment at={likely} />)}
      </p>
    </div>
  );
}
