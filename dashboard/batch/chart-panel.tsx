import { useMemo, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import { ChartBlock } from '../chart/chart-block.tsx';
import type { CurveSource } from '../chart/use-curves.ts';
import { Choice } from '../forms/choice.tsx';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

/** The air over the boards and the sum they gathered, of the last coat or of one before it. */
export function ChartPanel({ batch }: { batch: Batch }) {
  const { api } = useShed();
  const { chart } = useReader().words;
  const ownName = useOwnName();
  const last = batch.coats[batch.coats.length - 1]?.id ?? '';
  const [chosen, setChosen] = useState<string | null>(null);
  const coatId = chosen ?? last;
  const coat = batch.coats.find(({ id }) => id === coatId) ?? null;
  const { id, placeId } = batch;
  const source = useMemo<CurveSource>(
    () => ({
      curves: (span) => api.call('batchCurves', { params: { id }, query: { ...span, coatId } }),
      changes: (span) => api.call('airChanges', { params: { id: placeId }, query: span }),
    }),
    [api, id, placeId, coatId],
  );
  if (coat === null) return null;
  return (
    <section class="charts" aria-labelledby="charts-title">
      <h2 id="charts-title">{chart.batch.title}</h2>
      {batch.coats.length > 1 && (
        <Choice
          legend={chart.batch.which}
          name="chart-coat"
          options={batch.coats.map((one) => ({ value: one.id, words: ownName(one.name) }))}
          value={coatId}
          onChange={setChosen}
        />
      )}
      <ChartBlock
        title={`${batch.name}, ${ownName(coat.name)}`}
        source={source}
        coat={coat}
        news={coat}
      />
    </section>
  );
}
