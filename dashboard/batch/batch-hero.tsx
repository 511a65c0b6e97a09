import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import type { Gate, GateVerdict } from '../../daemon/contract/gate.ts';
import { Board, Grain } from '../board/board.tsx';
import { boardScale } from '../board/board-scale.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { facesLine } from '../format/lists.ts';
import { expectedAt } from '../format/time-left.ts';
import { PlankWord } from '../lettering/plank-word.tsx';
import { risesAbove } from '../lettering/planks.ts';
import { useOwnName } from '../own-name.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { SignMark } from '../wall/sign-mark.tsx';
import type { Sign } from '../words/sign.ts';

interface BatchHeroProps {
  batch: Batch;
  /** The coat that cures; null before the first. */
  coat: Coat | null;
  waitedFor: Gate | null;
  fresh: boolean;
}

/** The batch’s board with its five kerfs, and the word that stands on it. */
export function BatchHero({ batch, coat, waitedFor, fresh }: BatchHeroProps) {
  const { words, figures } = useReader();
  const { signs, jobs } = words;
  const { hero, verdict } = words.batch;
  const gate = coat === null || waitedFor === null ? null : coat.gates[waitedFor];
  const sign: Sign = coat === null ? 'bare' : (gate?.verdict ?? 'done');
  const job = waitedFor === null ? null : jobs[waitedFor].infinitive;
  const rises = risesAbove(signs[sign].laid);
  return (
    <section
      class={`hero sign-${sign}${rises ? ' hero-rises' : ''}${fresh ? '' : ' wall-board-old'}`}
      aria-label={verdict}
    >
      <Grain seed={batch.id} fit="ground" />
      <div class="hero-word">
        <PlankWord
          word={signs[sign].laid}
          spoken={
            gate !== null && job !== null
              ? hero.spoken(signs[sign].spoken, job)
              : signs[sign].spoken
          }
          hollow={!fresh}
        />
        <SignMark sign={sign} />
      </div>
      <div class="hero-when">
        {gate !== null && job !== null && <p class="wall-job">{job}</p>}
        {!fresh && <p class="wall-likely">{hero.notSure}</p>}
        {fresh && gate === null && <p class="wall-likely">{signs[sign].meaning}</p>}
        {fresh && gate !== null && <When gate={gate} />}
        {fresh && gate?.verdict === 'hold' && <WhatHolds gate={gate} />}
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
          spoken={hero.gathered(
            figures.degreeHours(coat.degreeHours),
            figures.degreeHours(coat.requiredDegreeHours),
          )}
        />
      )}
    </section>
  );
}

function When({ gate }: { gate: GateVerdict }) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const expected = expectedAt(gate, live.now.value, calendar);
  const doubt = words.times.doubt(expected);
  return (
    <>
      <p class="wall-likely">
        {gate.likely !== null && expected.kind === 'likely' ? (
          <PaintersMoment at={Date.parse(gate.likely)}>
            {words.times.likely(expected)}
          </PaintersMoment>
        ) : (
          words.times.likely(expected)
        )}
      </p>
      {doubt !== null && <p class="wall-window">{doubt}</p>}
    </>
  );
}

/** The first reason of a hold; all of them stand with the job below. */
function WhatHolds({ gate }: { gate: GateVerdict }) {
  const holds = gate.reasons.find(({ code }) => code !== 'how-to-test');
  return holds === undefined ? null : (
    <p class="wall-window">
      <Said sentence={holds} />
    </p>
  );
}

/** Which coat on which side, the last board when, and how far it is. */
export function CoatFacts({ batch, coat }: { batch: Batch; coat: Coat }) {
  const { words, figures, locale } = useReader();
  const ownName = useOwnName();
  const { hero } = words.batch;
  return (
    <div class="coat-facts">
      <p>
        {hero.coat(
          figures.number(coat.coat + 1),
          figures.number(batch.plan.coats.length),
          ownName(coat.name),
          words.stages[coat.stage],
        )}{' '}
        {hero.faces(facesLine(coat.faces, words.things, locale))}{' '}
        {hero.lastBoard(<PaintersMoment at={Date.parse(coat.finishedAt)} />)}
      </p>
      <p>
        {hero.sum(
          figures.degreeHours(coat.degreeHours),
          figures.hours(coat.equivalentHours),
          figures.measure('tempC', 20, 0),
        )}
      </p>
    </div>
  );
}
