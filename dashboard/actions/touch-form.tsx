import { useState } from 'preact/hooks';
import type { Gate } from '../../daemon/contract/gate.ts';
import { Choice } from '../forms/choice.tsx';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { ChangeLines } from '../trade/change-lines.tsx';
import { StillThere } from '../trade/still-there.tsx';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import type { ActionProps } from './action-props.ts';

type TouchFormProps = ActionProps & { nextGate: Gate | null; onMoved: () => void };

/** A touch test: it opened with one tap, and is recorded with the second. */
export function TouchForm({ batch, onDone, onMoved, nextGate }: TouchFormProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [gate, setGate] = useState<Gate>(nextGate ?? 'recoat');
  const [on, setOn] = useState<'board' | 'offcut'>('board');
  const job = jobs[gate];

  async function record(passed: boolean): Promise<void> {
    const at = new Date(live.now.peek()).toISOString();
    const test = await sending.send((id) =>
      api.call('createTest', { params: { id: batch.id }, body: { id, at, gate, passed, on } }),
    );
    if (test === null) return;
    onDone(
      <>
        <p>
          Recorded: felt whether it is ready {job.infinitive}; {passed ? 'it is' : 'not yet'}.
        </p>
        <ChangeLines changed={test.changed} />
      </>,
    );
  }

  return (
    <>
      <StillThere batch={batch} onMoved={onMoved} />
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={async () => {}}>
        <p class="touch-how">{job.test}</p>
        <p class="touch-where">
          First on the witness offcut; then on the slowest board: bottom shelf, middle of the rack,
          a knot, a fat edge.
        </p>
        <div class="touch-answers">
          <button type="button" class="answer answer-failed" onClick={() => void record(false)}>
            <span class="answer-word">Not yet</span>
            <span class="answer-what">{job.failed}</span>
          </button>
          <button type="button" class="answer answer-passed" onClick={() => void record(true)}>
            <span class="answer-word">It is</span>
            <span class="answer-what">{job.passed}</span>
          </button>
        </div>
        <Choice
          legend="Felt for"
          name="gate"
          options={jobsInOrder.map((value) => ({ value, words: jobs[value].noun }))}
          value={gate}
          onChange={setGate}
        />
        <Choice
          legend="Felt on"
          name="on"
          options={[
            { value: 'board', words: 'a board' },
            { value: 'offcut', words: 'the offcut coated with it' },
          ]}
          value={on}
          onChange={setOn}
        />
      </WriteFrame>
    </>
  );
}
