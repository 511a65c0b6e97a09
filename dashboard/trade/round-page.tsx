import { useCallback, useState } from 'preact/hooks';
import type { GateChange } from '../../daemon/contract/coat.ts';
import type { RoundQuestion } from '../../daemon/contract/morning-round.ts';
import { oddsWords } from '../format/figures.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { jobs } from '../words/job-words.ts';
import { liesWords } from '../words/trade-words.ts';
import { ChangeLines } from './change-lines.tsx';

/** The morning round: one question, at the rack where its answer changes most. */
export function RoundPage() {
  const { api } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('morningRound', {}), [api]));
  const [changed, setChanged] = useState<readonly GateChange[] | null>(null);
  const round = replied.kind === 'there' ? replied.reply : null;
  return (
    <main class="page round">
      <h1>The morning round</h1>
      {changed !== null && (
        <section class="round-done" role="status">
          <h2>Recorded. What it changed:</h2>
          <ChangeLines changed={changed} />
        </section>
      )}
      {round?.question && changed === null && (
        <Question
          question={round.question}
          onAnswered={(lines) => {
            setChanged(lines);
            again();
          }}
        />
      )}
      {round !== null && round.question === null && (
        <p class="round-none">
          {round.answered
            ? 'Felt for today. One question a day is enough.'
            : 'Nothing to feel this morning: no answer would change what is done today.'}
        </p>
      )}
    </main>
  );
}

interface QuestionProps {
  question: RoundQuestion;
  onAnswered: (changed: readonly GateChange[]) => void;
}

function Question({ question, onAnswered }: QuestionProps) {
  const { api, live, calendar } = useShed();
  const sending = useSending();
  const { gate, kind, batchId, batchName } = question;
  const job = jobs[gate];
  const believed = {
    placeId: question.placeId,
    placeName: question.placeName,
    since: question.since,
  };

  async function answer(passed: boolean, on: 'board' | 'offcut'): Promise<void> {
    const at = kind === 'outcome' ? question.at : new Date(live.now.peek()).toISOString();
    const test = await sending.send((id) =>
      api.call('createTest', {
        params: { id: batchId },
        body: {
          ...{ id, at, gate, passed, on },
          learnedBy: kind === 'outcome' ? 'outcome' : 'touch',
        },
      }),
    );
    if (test === null) return;
    onAnswered(test.changed);
    await live.refresh();
  }

  return (
    <section class="round-question" aria-labelledby="question-title">
      <h2 id="question-title">
        {kind === 'outcome'
          ? `How did sanding “${batchName}” go?`
          : `${batchName}: ${job.question}`}
      </h2>
      <p class="round-where">
        {capital(liesWords(believed, live.now.value, calendar))}. Still there?{' '}
        <a href={batchAddress(batchId)}>No, say where</a>
      </p>
      <ol class="round-places">
        {question.where.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <p class="touch-how">{question.feel}</p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={async () => {}}>
        <div class="touch-answers">
          <button
            type="button"
            class="answer answer-failed"
            onClick={() => void answer(false, 'offcut')}
          >
            <span class="answer-word">{kind === 'outcome' ? 'It clogged' : 'Not yet'}</span>
            <span class="answer-what">{job.failed}</span>
          </button>
          <button
            type="button"
            class="answer answer-passed"
            onClick={() => void answer(true, 'offcut')}
          >
            <span class="answer-word">{kind === 'outcome' ? 'It dusted' : 'It is'}</span>
            <span class="answer-what">{job.passed}</span>
          </button>
        </div>
      </WriteFrame>
      <p>{question.ifPassed}</p>
      <p>{question.ifFailed}</p>
      <p class="quiet">
        Chance so far: {oddsWords(question.probability)}. This rack was chosen because an answer
        changes most here. Felt on a board instead of the offcut?{' '}
        <a href={batchAddress(batchId)}>Record it there</a>.
      </p>
    </section>
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
