import { useCallback } from 'preact/hooks';
import { listLine } from '../format/lists.ts';
import { useReader } from '../reader.ts';
import { BatchForm } from '../setup/batch-form.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** What is coated together: timber, boards, and the plan by its surface. */
export function BatchStep({ overview, again, goOn }: StepProps) {
  const { api } = useShed();
  const { words, locale } = useReader();
  const said = words.firstRun.batch;
  const plans = useReply(useCallback(() => api.call('listPlans', {}), [api]));
  const { places } = overview;
  const batches = places.flatMap((place) => place.batches);
  const first = places.find(({ kind }) => kind === 'rack') ?? places[0];
  return (
    <Screen step="batch" says={said.says} isDone={batches.length > 0}>
      {batches.length > 0 && (
        <p>
          {said.there(
            listLine(
              batches.map(({ name }) => name),
              locale,
            ),
          )}
        </p>
      )}
      <BatchForm
        places={places}
        plans={plans.replied.kind === 'there' ? plans.replied.reply : []}
        batches={[]}
        isBrief
        {...(first === undefined ? {} : { placeId: first.id })}
        onStarted={() => void again().then(goOn)}
      />
    </Screen>
  );
}
