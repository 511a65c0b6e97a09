import { useCallback, useState } from 'preact/hooks';
import type { RoundQuestion } from '../../daemon/contract/morning-round.ts';
import type { RouteReply } from '../../daemon/contract/routes.ts';
import { liesLine } from '../format/changes.ts';
import { oddsLine } from '../format/odds.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { newId } from '../new-id.ts';
import { HeldNote, HOLD_MS } from '../offline/held-note.tsx';
import type { Ticket } from '../offline/outbox.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { ChangeLines } from './change-lines.tsx';
import { RackList } from './rack-list.tsx';

interface Answered {
  readonly ticket: Ticket;
  readonly recorded: string;
}

/** The morning round: one question, at the rack where its answer changes most; then rack by rack. */
export function RoundPage() {
  const { api, live } = useShed();
  const { round: words } = useReader().words.trade;
  const { replied, again } = useReply(useCallback(() => api.call('morningRound', {}), [api]));
  const [answered, setAnswered] = useState<Answered | null>(null);
  const round = replied.kind === 'there' ? replied.reply : null;
  return (
    <main class="page round">
      <h1>{words.title}</h1>
      {answered !== null && (
        <section class="round-done" role="status">
          <HeldNote
            key={answered.ticket.id}
            ticket={answered.ticket}
            recorded={answered.recorded}
            onSent={() => {
              again();
              void live.refresh();
            }}
          >
            {(reply) => (
              <>
                <h2>{words.changed}</h2>
                <ChangeLines changed={(reply as RouteReply<'createTest'>).changed} />
              </>
            )}
          </HeldNote>
        </section>
      )}
      {round?.question && answered === null && (
        <Question question={round.question} onAnswered={setAnswered} />
      )}
      {round !== null && round.question === null && (
        <p class="round-none">{round.answered ? words.answered : words.nothing}</p>
      )}
      <RackList />
    </main>
  );
}

interface QuestionProps {
  question: RoundQuestion;
  onAnswered: (answered: Answered) => void;
}

function Question({ question, onAnswered }: QuestionProps) {
  const { live, outbox } = useShed();
  const { words, calendar } = useReader();
  const { round } = words.trade;
  const { touch } = words.actions;
  const { gate, kind, batchId, batchName } = question;
  const job = words.jobs[gate];
  const believed = {
    placeId: question.placeId,
    placeName: question.placeName,
    since: question.since,
  };

  async function answer(passed: boolean): Promise<void> {
    const at = kind === 'outcome' ? question.at : new Date(live.clock().shedNow).toISOString();
    const learnedBy = kind === 'outcome' ? ('outcome' as const) : ('touch' as const);
    const id = newId();
    const body = { id, at, gate, passed, on: 'offcut' as const, learnedBy };
    const ticket = await outbox.record(
      {
        id,
        name: 'createTest',
        batchIds: [batchId],
        batchName,
        given: { params: { id: batchId }, body },
      },
      HOLD_MS,
    );
    const recorded = passed ? round.passed(job.infinitive) : round.failed(job.infinitive);
    onAnswered({ ticket, recorded });
  }

  return (
    <section class="round-question" aria-labelledby="question-title">
      <h2 id="question-title">
        {kind === 'outcome'
          ? round.howSandingWent(batchName)
          : round.question(batchName, job.question)}
      </h2>
      <p class="round-where">
        {liesLine(believed, live.now.value, calendar, words)} {words.trade.stillThere}{' '}
        <a href={batchAddress(batchId)}>{round.sayWhere}</a>
      </p>
      <ol class="round-places">
        {question.whereSaid.map((line) => (
          <li key={line.text}>
            <Said sentence={line} />
          </li>
        ))}
      </ol>
      <p class="touch-how">
        <Said sentence={question.feelSaid} />
      </p>
      <WriteFrame problem={null} busy={false} onSend={async () => {}}>
        <div class="touch-answers">
          <button type="button" class="answer answer-failed" onClick={() => void answer(false)}>
            <span class="answer-word">{kind === 'outcome' ? round.clogged : touch.notYet}</span>
            <span class="answer-what">{job.failed}</span>
          </button>
          <button type="button" class="answer answer-passed" onClick={() => void answer(true)}>
            <span class="answer-word">{kind === 'outcome' ? round.dusted : touch.itIs}</span>
            <span class="answer-what">{job.passed}</span>
          </button>
        </div>
      </WriteFrame>
      <p>
        <Said sentence={question.ifPassedSaid} />
      </p>
      <p>
        <Said sentence={question.ifFailedSaid} />
      </p>
      <p class="quiet">
        {round.chosen(
          oddsLine(question.probability, words.times),
          <a href={batchAddress(batchId)}>{round.recordThere}</a>,
        )}
      </p>
    </section>
  );
}
