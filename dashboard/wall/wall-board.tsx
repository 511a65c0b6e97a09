import { Board, Grain } from '../board/board.tsx';
import { boardScale } from '../board/board-scale.ts';
import type { Calendar } from '../format/calendar.ts';
import { PlankWord } from '../lettering/plank-word.tsx';
import { batchAddress } from '../router.ts';
import { jobs } from '../words/job-words.ts';
import { stageWords } from '../words/stage-words.ts';
import { signs } from '../words/verdict-words.ts';
import { SignMark } from './sign-mark.tsx';
import type { WallRow } from './wall-rows.ts';
import { WhenLines } from './when-lines.tsx';

interface WallBoardProps {
  row: WallRow;
  now: number;
  calendar: Calendar;
  fresh: boolean;
  wrong: readonly string[];
}

/** One board of the wall. */
export function WallBoard({ row, now, calendar, fresh, wrong }: WallBoardProps) {
  const { place, batch, sign } = row;
  const words = signs[sign];
  const job = batch?.nextGate ?? null;
  const forJob = job !== null && batch?.verdict != null ? jobs[job].infinitive : null;
  return (
    <li class={`wall-board sign-${sign}${fresh ? '' : ' wall-board-old'}`}>
      <Grain seed={row.key} fit="ground" />
      <div class="wall-who">
        <h2 class="wall-place">{place.name}</h2>
        {batch === null ? (
          <p class="wall-batch">no batch lies here</p>
        ) : (
          <p class="wall-batch">
            <a href={batchAddress(batch.id)}>{batch.name}</a>, {batch.boards}{' '}
            {batch.boards === 1 ? 'board' : 'boards'}
          </p>
        )}
        {batch !== null && <p class="wall-coat">{coatLine(batch)}</p>}
      </div>
      <div class="wall-word">
        <PlankWord
          word={words.laid}
          spoken={`${fresh ? '' : 'No longer sure: '}${words.spoken}${forJob === null ? '' : ` ${forJob}`}`}
          hollow={!fresh}
        />
        <SignMark sign={sign} />
      </div>
      <div class={wrong.length > 0 ? 'wall-when wall-when-wrong' : 'wall-when'}>
        <WhenLines
          row={row}
          now={now}
          calendar={calendar}
          fresh={fresh}
          forJob={forJob}
          wrong={wrong}
        />
      </div>
      {batch !== null && batch.coat !== null && (
        <Board
          seed={batch.id}
          scale={boardScale(
            batch.degreeHours ?? 0,
            job === null || batch.verdict === null
              ? []
              : [{ gate: job, need: batch.verdict.requiredDegreeHours }],
            job,
          )}
          spoken={shareWords(batch.share, job === null ? null : jobs[job].infinitive)}
        />
      )}
    </li>
  );
}

function coatLine(batch: NonNullable<WallRow['batch']>): string {
  if (batch.coat === null) return `${batch.coatCount} coats planned`;
  const coat = `coat ${batch.coat + 1} of ${batch.coatCount}`;
  return batch.stage === null ? coat : `${coat}, ${stageWords[batch.stage]}`;
}

function shareWords(share: number | null, job: string | null): string {
  if (share === null || job === null) return 'How far the paint has dried is not known.';
  return `The paint has dried ${Math.round(share * 100)} % of what is likely needed ${job}.`;
}
