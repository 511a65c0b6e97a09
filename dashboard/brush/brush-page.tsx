import { useCallback, useState } from 'preact/hooks';
import type { Overview, OverviewPlace } from '../../daemon/contract/overview.ts';
import { withinSentence } from '../format/lists.ts';
import { SelectField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { FitAnswer, HoursAhead } from './fit-answer.tsx';
import { MoistureForm } from './moisture-form.tsx';

/** “Fit to brush?” for a shed or a wall, and for the boards that are to be coated there. */
export function BrushPage() {
  const overview = useShed().live.overview.value;
  const { brush } = useReader().words;
  if (overview === null) return <main class="page" />;
  if (overview.places.length === 0) {
    return (
      <main class="page">
        <h1>{brush.title}</h1>
        <p class="lead">{brush.noPlace(<a href="#/setup">{brush.setUpFirst}</a>)}</p>
      </main>
    );
  }
  return <BrushQuestion overview={overview} />;
}

/** Where the meter goes in. Common practice, no source. */
const fromTheEndCm = 30;

/** Rooms and walls are where one brushes; racks come after them. */
const order: readonly OverviewPlace['kind'][] = ['room', 'wall', 'rack', 'outdoors'];

function BrushQuestion({ overview }: { overview: Overview }) {
  const { api } = useShed();
  const { words, figures, locale } = useReader();
  const { brush, things } = words;
  const places = [...overview.places].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
  const [placeId, setPlaceId] = useState(places[0]?.id ?? '');
  const [batchId, setBatchId] = useState('');
  const ask = useCallback(
    () => api.call('fitToBrush', { query: { placeId, ...(batchId === '' ? {} : { batchId }) } }),
    [api, placeId, batchId],
  );
  const { replied, again } = useReply(ask);
  const batches = overview.places.flatMap((place) => place.batches);
  return (
    <main class="page brush">
      <h1>{brush.title}</h1>
      <div class="field-grid brush-where">
        <SelectField
          label={brush.where}
          name="placeId"
          value={placeId}
          onChange={setPlaceId}
          pointer="/placeId"
          problem={null}
        >
          {places.map((place) => (
            <option key={place.id} value={place.id}>
              {brush.placeOfKind(place.name, withinSentence(things.placeKinds[place.kind], locale))}
            </option>
          ))}
        </SelectField>
        <SelectField
          label={brush.whichBoards}
          name="batchId"
          value={batchId}
          onChange={setBatchId}
          pointer="/batchId"
          problem={null}
        >
          <option value="">{brush.noMatter}</option>
          {batches.map((batch) => (
            <option key={batch.id} value={batch.id}>
              {batch.name}
            </option>
          ))}
        </SelectField>
      </div>
      {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
      {replied.kind === 'there' && <FitAnswer fit={replied.reply} />}
      <section class="brush-meter" aria-labelledby="meter-title">
        <h2 id="meter-title">{brush.meter.title}</h2>
        <p class="quiet">{brush.meter.how(figures.measure('lengthCm', fromTheEndCm, 0))}</p>
        <MoistureForm
          placeId={placeId}
          batchId={batchId}
          name={[...batches, ...places].find(({ id }) => id === (batchId || placeId))?.name ?? ''}
          onRecorded={again}
        />
      </section>
      {replied.kind === 'there' && replied.reply.hours.length > 0 && (
        <HoursAhead fit={replied.reply} />
      )}
    </main>
  );
}
