import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import { facesLine, mixtureLine } from '../format/lists.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** The first coat, and right after it what becomes of the rags. */
export function CoatStep({ overview, again, goOn }: StepProps) {
  const { firstRun } = useReader().words;
  const [isRecorded, setRecorded] = useState(false);
  const bare = bareBatch(overview);
  const hasCoat = overview.places.some(({ batches }) => batches.some(({ coat }) => coat !== null));
  if (isRecorded) return <RagsNow onSeen={goOn} />;
  return (
    <Screen step="coat" says={bare === null ? firstRun.verdict.noBatch : ''} isDone={hasCoat}>
      {bare !== null && (
        <CoatForm
          batchId={bare.id}
          onRecorded={() => {
            setRecorded(true);
            void again();
          }}
        />
      )}
    </Screen>
  );
}

/** The newest batch without a coat. */
function bareBatch({ places }: Overview) {
  const bare = places.flatMap(({ batches }) => batches.filter(({ coat }) => coat === null));
  return bare[bare.length - 1] ?? null;
}

function CoatForm({ batchId, onRecorded }: { batchId: string; onRecorded: () => void }) {
  const { api } = useShed();
  const { replied } = useReply(
    useCallback(() => api.call('readBatch', { params: { id: batchId } }), [api, batchId]),
  );
  return replied.kind === 'there' ? (
    <KnownCoat batch={replied.reply} onRecorded={onRecorded} />
  ) : null;
}

function KnownCoat({ batch, onRecorded }: { batch: Batch; onRecorded: () => void }) {
  const { api, live } = useShed();
  const { words, locale } = useReader();
  const ownName = useOwnName();
  const said = words.firstRun.coat;
  const sending = useSending();
  const planned = batch.plan.coats[0];

  async function record(form: FormData): Promise<void> {
    const finishedAt = whenOf(form, 'finishedAt', live.now.peek());
    const coat = await sending.send((id) =>
      api.call('createCoat', { params: { id: batch.id }, body: { id, coat: 0, finishedAt } }),
    );
    if (coat !== null) onRecorded();
  }

  return (
    <>
      {planned !== undefined && (
        <>
          <p class="first-run-heard">{said.says(batch.name, ownName(planned.name))}</p>
          <p>
            {said.mixture(
              mixtureLine(planned.mixture, words.things),
              facesLine(planned.faces, words.things, locale),
            )}
          </p>
        </>
      )}
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
        <WhenField
          legend={said.done}
          name="finishedAt"
          pointer="/finishedAt"
          problem={sending.problem}
          now={live.now.peek()}
        />
        <button type="submit" class="button button-main button-wide">
          {said.record}
        </button>
      </WriteFrame>
    </>
  );
}

function RagsNow({ onSeen }: { onSeen: () => void }) {
  const { cautions, firstRun } = useReader().words;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <main class="page first-run">
      <div class="caution caution-now">
        <h1 ref={heading} tabIndex={-1}>
          {cautions.rags.title}
        </h1>
        {cautions.rags.lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <button type="button" class="button button-main" onClick={onSeen}>
          {firstRun.coat.ragsSeen}
        </button>
      </div>
    </main>
  );
}
