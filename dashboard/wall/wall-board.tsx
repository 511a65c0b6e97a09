import { Board, Grain } from '../board/board.tsx';
import { boardScale } from '../board/board-scale.ts';
import { plainList } from '../format/lists.ts';
import { PlankWord } from '../lettering/plank-word.tsx';
import { type Reader, useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { SignMark } from './sign-mark.tsx';
import type { WallRow, Wrong } from './wall-rows.ts';
import { WhenLines } from './when-lines.tsx';

interface WallBoardProps {
  row: WallRow;
  now: number;
  fresh: boolean;
  wrong: readonly Wrong[];
}

/** One board of the wall. */
export function WallBoard({ row, now, fresh, wrong }: WallBoardProps) {
  const reader = useReader();
  const { wall, signs, jobs } = reader.words;
  const { place, batch, sign } = row;
  const { laid, spoken } = signs[sign];
  const job = batch?.nextGate ?? null;
  const forJob = job !== null && batch?.verdict != null ? jobs[job].infinitive : null;
  const verdict = forJob === null ? spoken : wall.spoken(spoken, forJob);
  return (
    <li class={`wall-board sign-${sign}${fresh ? '' : ' wall-board-old'}`}>
      <Grain seed={row.key} fit="ground" />
      <div class="wall-who">
        <h2 class="wall-place">{place.name}</h2>
        {batch !== null && (
          <p class="wall-batch">
            <BatchLine batch={batch} />
          </p>
        )}
      </div>
      <div class="wall-word">
        <PlankWord word={laid} spoken={fresh ? verdict : wall.spokenOld(verdict)} hollow={!fresh} />
        <SignMark sign={sign} />
      </div>
      <div class="wall-when">
        <WhenLines row={row} now={now} fresh={fresh} forJob={forJob} wrong={wrong} />
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
          spoken={driedWords(batch.share, job === null ? null : jobs[job].infinitive, reader)}
        />
      )}
    </li>
  );
}

/** “South gable: coat 1 of 3, tack-free”. */
function BatchLine({ batch }: { batch: NonNullable<WallRow['batch']> }) {
  const { words } = useReader();
  const { wall, stages } = words;
  const coat =
    batch.coat === null
      ? wall.coatsPlanned(batch.coatCount)
      : wall.coatOf(batch.coat + 1, batch.coatCount);
  const said = batch.coat === null || batch.stage === null ? [coat] : [coat, stages[batch.stage]];
  return (
    <>
      <a href={batchAddress(batch.id)}>{batch.name}</a>{' '}
      <span class="wall-coat">{plainList(said)}</span>
    </>
  );
}

function driedWords(share: number | null, job: string | null, { words, figures }: Reader): string {
  return share === null || job === null
    ? words.wall.driedUnknown
    : words.wall.dried(figures.share(share), job);
}
