import type { Calendar } from '../format/calendar.ts';
import { humidity, temperature } from '../format/figures.ts';
import { agoWords } from '../format/painters-time.ts';
import { timeLeft } from '../format/time-left.ts';
import { airflowWords } from '../words/thing-words.ts';
import { signs } from '../words/verdict-words.ts';
import type { WallRow } from './wall-rows.ts';

interface WhenLinesProps {
  row: WallRow;
  now: number;
  calendar: Calendar;
  fresh: boolean;
  /** “to stack”; null when nothing is waited for. */
  forJob: string | null;
  wrong: readonly string[];
}

/** A reading as new as this needs no word: its line stays one line, ms. */
const NEW_MS = 10 * 60_000;
const isWorthSaying = (ageMs: number) => ageMs > NEW_MS;

/** For which job, when, how the air is, and what is wrong: few lines, the loudest kept. */
export function WhenLines({ row, now, calendar, fresh, forJob, wrong }: WhenLinesProps) {
  const { air, airflow } = row.place;
  // A board that is held says why already; more lines would not fit under it.
  const loudest = fresh && row.sign === 'hold' ? undefined : wrong[0];
  return (
    <>
      {forJob !== null && <p class="wall-job">{forJob}</p>}
      <Expected row={row} now={now} calendar={calendar} fresh={fresh} brief={wrong.length > 0} />
      <p class="wall-air">
        {temperature(air.tempC)} · {humidity(air.rhPercent)} · air: {airflowWords[airflow]}
        {air.at !== null && isWorthSaying(now - Date.parse(air.at)) && (
          <> · {agoWords(Date.parse(air.at), now)}</>
        )}
      </p>
      {loudest !== undefined && <p class="wall-wrong">{loudest}</p>}
    </>
  );
}

function Expected({
  row,
  now,
  calendar,
  fresh,
  brief,
}: Pick<WhenLinesProps, 'row' | 'now' | 'calendar' | 'fresh'> & { brief: boolean }) {
  const { batch, sign } = row;
  if (!fresh) return <p class="wall-likely">Not sure any more</p>;
  const verdict = batch?.verdict ?? null;
  if (verdict === null || sign === 'no-data') {
    return <p class="wall-likely">{signs[sign].meaning}</p>;
  }
  const reason = verdict.verdict === 'hold' ? verdict.reasons[0] : undefined;
  if (reason !== undefined) return <p class="wall-held">{reason.text}</p>;
  const left = timeLeft(verdict, now, calendar);
  return (
    <>
      <p class="wall-likely">{left.likely}</p>
      {!brief && left.window !== null && <p class="wall-window">{left.window}</p>}
    </>
  );
}
