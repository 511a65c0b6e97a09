import { useCallback, useState } from 'preact/hooks';
import type { BatchSummary, Species } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Plan, Surface } from '../../daemon/contract/plan.ts';
import type { Trade } from '../../daemon/contract/trade.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { speciesWords, surfaceWords } from '../words/thing-words.ts';
import { BoardSize, type Size } from './board-size.tsx';
import { TimberFields, timberOf } from './timber-fields.tsx';

const species = Object.entries(speciesWords) as [Species, string][];
const surfaces = Object.entries(surfaceWords) as [Surface, string][];

interface BatchFormProps {
  places: Overview['places'];
  plans: readonly Plan[];
  /** Those there are already: the newest is the start for the next. */
  batches: readonly BatchSummary[];
  onStarted: () => void;
}

/** Starts a batch and goes to its page; “same as last batch” is where it begins. */
export function BatchForm(props: BatchFormProps) {
  const { api } = useShed();
  const { replied } = useReply(useCallback(() => api.call('trade', {}), [api]));
  const last = [...props.batches].sort((a, b) => b.createdAt.localeCompare(a.createdAt))[0] ?? null;
  // Begun anew once the last batch is known, so that its figures stand in the fields.
  return (
    <NewBatch
      key={last?.id ?? 'first'}
      {...props}
      last={last}
      trade={replied.kind === 'there' ? replied.reply : null}
    />
  );
}

type NewBatchProps = BatchFormProps & { last: BatchSummary | null; trade: Trade | null };

function NewBatch({ places, plans, last, trade, onStarted }: NewBatchProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [surface, setSurface] = useState<Surface>(last?.surface ?? 'sawn');
  const [size, setSize] = useState<Size>({
    lengthMm: last ? String(last.boards.lengthMm) : '',
    widthMm: last ? String(last.boards.widthMm) : '',
    thicknessMm: last ? String(last.boards.thicknessMm) : '',
  });
  const { problem } = sending;

  async function start(form: FormData): Promise<void> {
    const planId = textOf(form, 'planId');
    const batch = await sending.send((id) =>
      api.call('createBatch', {
        body: {
          id,
          name: textOf(form, 'name'),
          placeId: textOf(form, 'placeId'),
          species: textOf(form, 'species') as Species,
          surface,
          boards: {
            count: numberOf(form, 'count'),
            lengthMm: numberOf(form, 'lengthMm'),
            widthMm: numberOf(form, 'widthMm'),
            thicknessMm: numberOf(form, 'thicknessMm'),
          },
          ...(planId === '' ? {} : { planId }),
          ...timberOf(form),
        },
      }),
    );
    if (batch === null) return;
    onStarted();
    await live.refresh();
    location.hash = batchAddress(batch.id);
  }

  const forSurface = plans.filter((plan) => plan.surface === surface);
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={start}>
      {last !== null && (
        <p class="quiet">Same timber and size as “{last.name}”, until you say otherwise.</p>
      )}
      <TextField
        label="Name"
        name="name"
        pointer="/name"
        problem={problem}
        hint="What the boards are for, for example South gable"
      />
      <SelectField label="Where the boards lie" name="placeId" pointer="/placeId" problem={problem}>
        {places.map((place) => (
          <option key={place.id} value={place.id} selected={place.id === last?.placeId}>
            {place.name}
          </option>
        ))}
      </SelectField>
      <Choice
        legend="Surface"
        name="surface"
        options={surfaces.map(([value, words]) => ({ value, words }))}
        value={surface}
        onChange={setSurface}
      />
      <SelectField label="Timber" name="species" pointer="/species" problem={problem}>
        {species.map(([value, words]) => (
          <option key={value} value={value} selected={value === last?.species}>
            {words}
          </option>
        ))}
      </SelectField>
      <TextField
        label="Boards"
        name="count"
        kind="number"
        pointer="/boards/count"
        problem={problem}
      />
      <BoardSize trade={trade} size={size} onSize={setSize} problem={problem} />
      <SelectField label="Coating plan" name="planId" pointer="/planId" problem={problem}>
        <option value="">the usual one</option>
        {forSurface.map((plan) => (
          <option key={plan.id} value={plan.id} selected={plan.id === last?.planId}>
            {plan.name}
          </option>
        ))}
      </SelectField>
      <TimberFields
        last={last?.timber ?? null}
        problem={problem}
        leadCaution={trade?.leadCaution ?? null}
      />
      <button type="submit" class="button button-main">
        Start the batch
      </button>
    </WriteFrame>
  );
}
