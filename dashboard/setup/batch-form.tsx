import { useState } from 'preact/hooks';
import type { Species } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Plan, Surface } from '../../daemon/contract/plan.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { speciesWords, surfaceWords } from '../words/thing-words.ts';

const species = Object.entries(speciesWords) as [Species, string][];
const surfaces = Object.entries(surfaceWords) as [Surface, string][];

interface BatchFormProps {
  places: Overview['places'];
  plans: readonly Plan[];
  onStarted: () => void;
}

/** Starts a batch and goes to its page. */
export function BatchForm({ places, plans, onStarted }: BatchFormProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [surface, setSurface] = useState<Surface>('sawn');
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
      <TextField
        label="Name"
        name="name"
        pointer="/name"
        problem={problem}
        hint="What the boards are for, for example South gable"
      />
      <SelectField label="Where the boards lie" name="placeId" pointer="/placeId" problem={problem}>
        {places.map((place) => (
          <option key={place.id} value={place.id}>
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
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </SelectField>
      <div class="field-grid field-grid-four">
        <BoardsField label="Boards" name="count" problem={problem} />
        <BoardsField label="Length" name="lengthMm" unit="mm" problem={problem} />
        <BoardsField label="Width" name="widthMm" unit="mm" problem={problem} />
        <BoardsField label="Thickness" name="thicknessMm" unit="mm" problem={problem} />
      </div>
      <SelectField label="Coating plan" name="planId" pointer="/planId" problem={problem}>
        <option value="">the usual one</option>
        {forSurface.map((plan) => (
          <option key={plan.id} value={plan.id}>
            {plan.name}
          </option>
        ))}
      </SelectField>
      <button type="submit" class="button button-main">
        Start the batch
      </button>
    </WriteFrame>
  );
}

interface BoardsFieldProps extends Pick<Parameters<typeof TextField>[0], 'problem'> {
  label: string;
  name: 'count' | 'lengthMm' | 'widthMm' | 'thicknessMm';
  unit?: string;
}

function BoardsField({ label, name, unit, problem }: BoardsFieldProps) {
  return (
    <TextField
      label={label}
      name={name}
      kind="number"
      pointer={`/boards/${name}`}
      problem={problem}
      {...(unit === undefined ? {} : { unit })}
    />
  );
}
