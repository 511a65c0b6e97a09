import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Gate } from '../../daemon/contract/gate.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useTouch } from './use-touch.tsx';

interface TouchNowProps {
  batch: Batch;
  gate: Gate;
  onSent: () => void;
}

/** The question of the next job, right under the verdict: one tap answers, the next records. */
export function TouchNow({ batch, gate, onSent }: TouchNowProps) {
  const { words } = useReader();
  const { touch, confirm } = words.actions;
  const { record, isBusy } = useTouch(batch, onSent);
  const [chosen, setChosen] = useState<boolean | null>(null);
  const [said, setSaid] = useState<ComponentChildren>(null);
  const second = useRef<HTMLButtonElement>(null);
  const job = words.jobs[gate];
  // The second tap must not need a search.
  useEffect(() => {
    if (chosen !== null) second.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);

  async function send(passed: boolean): Promise<void> {
    setSaid(await record({ gate, passed, on: 'board' }));
    setChosen(null);
  }

  return (
    <section class="touch-now" aria-labelledby="touch-now-title">
      <h2 id="touch-now-title">{job.question}</h2>
      <WriteFrame problem={null} busy={isBusy} onSend={async () => {}}>
        <div class="touch-answers">
          {[false, true].map((passed) => (
            <button
              key={String(passed)}
              type="button"
              class={`answer ${passed ? 'answer-passed' : 'answer-failed'}`}
              aria-pressed={chosen === passed}
              onClick={() => {
                setSaid(null);
                setChosen(passed);
              }}
            >
              <span class="answer-word">{passed ? job.passed : job.failed}</span>
            </button>
          ))}
        </div>
        {chosen !== null && (
          <button
            ref={second}
            type="button"
            class="button button-main button-wide button-thumb"
            onClick={() => void send(chosen)}
          >
            {confirm(chosen ? job.passed : job.failed)}
          </button>
        )}
      </WriteFrame>
      <div class="action-said" role="status">
        {said}
      </div>
      <p class="touch-how">{job.test}</p>
      <p class="touch-where">{touch.where}</p>
    </section>
  );
}
