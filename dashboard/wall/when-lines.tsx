import { agoOf } from '../format/painters-time.ts';
import { expectedAt } from '../format/time-left.ts';
import { type Reader, useReader } from '../reader.ts';
import { type WallRow, type Wrong, wrongLine } from './wall-rows.ts';

interface WhenLinesProps {
  row: WallRow;
  now: number;
  fresh: boolean;
  /** “to stack”; null when nothing is waited for. */
  forJob: string | null;
  wrong: readonly Wrong[];
}

/** A reading as new as this needs no word: its line stays one line, ms. */
const NEW_MS = 10 * 60_000;

/** For which job, when, how the air is, and what is wrong: few lines, the loudest kept. */
export function WhenLines({ row, now, fresh, forJob, wrong }: WhenLinesProps) {
  const reader = useReader();
  // A board that is held says why already; more lines would not fit under it.
  const loudest = fresh && row.sign === 'hold' ? undefined : wrong[0];
  return (
    <>
      {forJob !== null && <p class="wall-job">{forJob}</p>}
      <Expected row={row} now={now} fresh={fresh} brief={wrong.length > 0} />
      {/* Poor air is told with what to do about it, and a held board has a reason that is read first. */}
      {wrong.length === 0 && row.sign !== 'hold' && (
        <p class="wall-air">{airLine(row, now, reader)}</p>
      )}
      {loudest !== undefined && <p class="wall-wrong">{wrongLine(loudest, reader, now)}</p>}
    </>
  );
}

/** The word alone: temperature and humidity are read at a desk, on the page of the batch. */
function airLine({ place }: WallRow, now: number, { words }: Reader): string {
  const { air, wall, times } = words;
  const word = air.flows[place.airflow];
  const at = place.air.at === null ? null : Date.parse(place.air.at);
  return at === null || now - at <= NEW_MS
    ? wall.air(word)
    : wall.airOld(word, times.ago(agoOf(at, now)));
}

function Expected({
  row,
  now,
  fresh,
  brief,
}: Pick<WhenLinesProps, 'row' | 'now' | 'fresh'> & { brief: boolean }) {
  const { words, calendar, say } = useReader();
  const { batch, sign } = row;
  if (!fresh) return <p class="wall-likely">{words.wall.notSure}</p>;
  const verdict = batch?.verdict ?? null;
  if (verdict === null || sign === 'no-data') {
    return <p class="wall-likely">{words.signs[sign].meaning}</p>;
  }
  const reason = verdict.verdict === 'hold' ? verdict.reasons[0] : undefined;
  if (reason !== undefined) return <p class="wall-held">{say(reason)}</p>;
  const expected = expectedAt(verdict, now, calendar);
  const doubt = words.times.doubt(expected);
  return (
    <>
      <p class="wall-likely">{words.times.likely(expected)}</p>
      {!brief && doubt !== null && <p class="wall-window">{doubt}</p>}
    </>
  );
}
