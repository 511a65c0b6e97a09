import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import { Board, Grain } from '../board/board.tsx';
import { boardScale } from '../board/board-scale.ts';
import { degreeHoursFigure, hoursFigure } from '../format/figures.ts';
import { timeLeft } from '../format/time-left.ts';
import { PlankWord } from '../lettering/plank-word.tsx';
import { useShed } from '../shed-context.ts';
import { SignMark } from '../wall/sign-mark.tsx';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import { stageWords } from '../words/stage-words.ts';
import { type Sign, signs } from '../words/verdict-words.ts';

interface BatchHeroProps {
  batch: Batch;
  /** The coat that cures; null before the first. */
  coat: Coat | null;
  waitedFor: Gate | null;
  fresh: boolean;
}

/** The batch’s board with its five kerfs, and the word that stands on it. */
export function BatchHero({ batch, coat, waitedFor, fresh }: BatchHeroProps) {
  const { live, calendar } = useShed();
  const gate = coat === null || waitedFor === null ? null : coat.gates[waitedFor];
  const sign: Sign = coat === null ? 'bare' : (gate?.verdict ?? 'done');
  const left = gate === null ? null : timeLeft(gate, live.now.value, calendar);
  const job = waitedFor === null ? null : jobs[waitedFor].infinitive;
  return (
    <section class={`hero sign-${sign}${fresh ? '' : ' wall-board-old'}`} aria-label="Verdict">
      <Grain seed={batch.id} fit="ground" />
      <div class="hero-word">
        <PlankWord
          word={signs[sign].laid}
          spoken={signs[sign].spoken + (gate !== null && job !== null ? ` ${job}` : '')}
          hollow={!fresh}
        />
        <SignMark sign={sign} />
      </div>
      <div class="hero-when">
        {gate !== null && job !== null && <p class="wall-job">{job}</p>}
        <p class="wall-likely">
          {fresh ? (left?.likely ?? signs[sign].meaning) : 'Not sure any more'}
        </p>
        {fresh && left !== null && left.window !== null && <p class="wall-window">{left.window}</p>}
        {coat !== null && (
          <p class="hero-sum">
            Coat {coat.coat + 1} of {batch.plan.coats.length}, {coat.name}: {stageWords[coat.stage]}
            . {degreeHoursFigure(coat.degreeHours)}, as much as {hoursFigure(coat.equivalentHours)}{' '}
            at 20 °C.
          </p>
        )}
      </div>
      {coat !== null && (
        <Board
          seed={batch.id}
          named
          scale={boardScale(
            coat.degreeHours,
            jobsInOrder.map((gateName) => ({
              gate: gateName,
              need: coat.gates[gateName].requiredDegreeHours,
            })),
            waitedFor,
          )}
          spoken={`${degreeHoursFigure(coat.degreeHours)} gathered; recoating likely needs ${degreeHoursFigure(coat.requiredDegreeHours)}.`}
        />
      )}
    </section>
  );
}
