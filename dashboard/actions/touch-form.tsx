import { useState } from 'preact/hooks';
import type { Gate } from '../../daemon/contract/gate.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { Choice } from '../forms/choice.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { StillThere } from '../trade/still-there.tsx';
import type { ActionProps } from './action-props.ts';
import { useTouch } from './use-touch.tsx';

type TouchFormProps = ActionProps & {
  nextGate: Gate | null;
  onMoved: () => void;
  onSent: () => void;
};

/** A touch test of any job, on a board or the offcut: it opened with one tap, the second records. */
export function TouchForm({ batch, onDone, onMoved, onSent, nextGate }: TouchFormProps) {
  const { words } = useReader();
  const { touch } = words.actions;
  const { record, isBusy } = useTouch(batch, onSent);
  const [gate, setGate] = useState<Gate>(nextGate ?? 'recoat');
  const [on, setOn] = useState<'board' | 'offcut'>('board');
  const job = words.jobs[gate];
  const answer = async (passed: boolean) => onDone(await record({ gate, passed, on }));

  return (
    <>
      <StillThere batch={batch} onMoved={onMoved} />
      <WriteFrame problem={null} busy={isBusy} onSend={async () => {}}>
        <p class="touch-how">{job.test}</p>
        <p class="touch-where">{touch.where}</p>
        <div class="touch-answers">
          <button type="button" class="answer answer-failed" onClick={() => void answer(false)}>
            <span class="answer-word">{touch.notYet}</span>
            <span class="answer-what">{job.failed}</span>
          </button>
          <button type="button" class="answer answer-passed" onClick={() => void answer(true)}>
            <span class="answer-word">{touch.itIs}</span>
            <span class="answer-what">{job.passed}</span>
          </button>
        </div>
        <Choice
          legend={touch.feltFor}
          name="gate"
          options={jobsInOrder.map((value) => ({ value, words: words.jobs[value].noun }))}
          value={gate}
          onChange={setGate}
        />
        <Choice
          legend={touch.feltOn}
          name="on"
          options={[
            { value: 'board', words: touch.on.board },
            { value: 'offcut', words: touch.on.offcut },
          ]}
          value={on}
          onChange={setOn}
        />
      </WriteFrame>
    </>
  );
}
