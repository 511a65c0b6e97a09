import { useState } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { NewPlace, PlaceKind } from '../../daemon/contract/place.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { placeKindWords } from '../words/thing-words.ts';

const kinds: readonly PlaceKind[] = ['rack', 'room', 'wall', 'outdoors'];

/** Makes a place. */
export function PlaceForm({ places }: { places: Overview['places'] }) {
  const { api, live } = useShed();
  const sending = useSending();
  const [kind, setKind] = useState<PlaceKind>('rack');
  const [said, setSaid] = useState('');

  async function make(form: FormData, element: HTMLFormElement): Promise<void> {
    const place = await sending.send((id) =>
      api.call('createPlace', { body: { id, ...placeOf(form, kind) } }),
    );
    if (place === null) return;
    element.reset();
    setSaid(`${place.name} is there.`);
    await live.refresh();
  }

  const { problem } = sending;
  const around = places.filter((place) => place.kind === 'room');
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={make}>
      <Choice
        legend="What is it"
        name="kind"
        options={kinds.map((value) => ({ value, words: placeKindWords[value] }))}
        value={kind}
        onChange={setKind}
      />
      <TextField
        label="Name"
        name="name"
        pointer="/name"
        problem={problem}
        hint="As it is called in the shed, for example North rack"
      />
      {kind === 'rack' && (
        <SelectField label="In which room" name="within" pointer="/within" problem={problem}>
          <option value="">in none</option>
          {around.map((place) => (
            <option key={place.id} value={place.id}>
              {place.name}
            </option>
          ))}
        </SelectField>
      )}
      {kind === 'rack' && <RackTakes problem={problem} />}
      {kind === 'room' && <RoomSize problem={problem} />}
      {kind === 'wall' && <WallFacing problem={problem} />}
      <button type="submit" class="button button-main">
        Make the place
      </button>
      <p class="action-said" role="status">
        {said}
      </p>
    </WriteFrame>
  );
}

function RackTakes({ problem }: Pick<Parameters<typeof TextField>[0], 'problem'>) {
  return (
    <>
      <div class="field-grid">
        <TextField
          label="Takes"
          name="capacityM"
          kind="number"
          unit="m of boards"
          pointer="/capacityM"
          problem={problem}
        />
        <TextField
          label="Or so many"
          name="capacityBoards"
          kind="number"
          unit="boards"
          pointer="/capacityBoards"
          problem={problem}
        />
      </div>
      <p class="field-hint">
        All shelves together. With both the tighter counts; with neither it never says that it is
        full.
      </p>
    </>
  );
}

function RoomSize({ problem }: Pick<Parameters<typeof TextField>[0], 'problem'>) {
  return (
    <div class="field-grid field-grid-three">
      <TextField label="Length" name="length" kind="number" unit="m" pointer="" problem={null} />
      <TextField label="Width" name="width" kind="number" unit="m" pointer="" problem={null} />
      <TextField
        label="Height"
        name="height"
        kind="number"
        unit="m"
        pointer="/volumeM3"
        problem={problem}
      />
    </div>
  );
}

function WallFacing({ problem }: Pick<Parameters<typeof TextField>[0], 'problem'>) {
  return (
    <div class="field-grid">
      <SelectField label="Facing" name="facing" pointer="/facing" problem={problem}>
        <option value="">not said</option>
        <option value="north">North</option>
        <option value="east">East</option>
        <option value="south">South</option>
        <option value="west">West</option>
      </SelectField>
      <SelectField label="Stands" name="exposure" pointer="/exposure" problem={problem}>
        <option value="">not said</option>
        <option value="open">open to weather</option>
        <option value="under-eaves">under eaves</option>
        <option value="shade">in the shade</option>
      </SelectField>
    </div>
  );
}

function placeOf(form: FormData, kind: PlaceKind): NewPlace {
  const sides = ['length', 'width', 'height'].map((name) => optionalNumberOf(form, name));
  const measured = sides.filter((side) => side !== null);
  const within = textOf(form, 'within');
  const capacityM = optionalNumberOf(form, 'capacityM');
  const capacityBoards = optionalNumberOf(form, 'capacityBoards');
  const facing = textOf(form, 'facing') as NonNullable<NewPlace['facing']> | '';
  const exposure = textOf(form, 'exposure') as NonNullable<NewPlace['exposure']> | '';
  return {
    kind,
    name: textOf(form, 'name'),
    ...(within === '' ? {} : { within }),
    ...(capacityM === null ? {} : { capacityM }),
    ...(capacityBoards === null ? {} : { capacityBoards }),
    // A room measured by half has no volume: NaN is sent as null, so it is left out instead.
    ...(measured.length === 3
      ? { volumeM3: measured.reduce((volume, side) => volume * side, 1) }
      : {}),
    ...(facing === '' ? {} : { facing }),
    ...(exposure === '' ? {} : { exposure }),
  };
}
