import { useState } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { NewPlace, PlaceKind } from '../../daemon/contract/place.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { optionsOf } from './options.ts';
import { RoomSize, volumeOf } from './room-size.tsx';

const kinds: readonly PlaceKind[] = ['rack', 'room', 'wall', 'outdoors'];

/** Makes a place. */
export function PlaceForm({ places }: { places: Overview['places'] }) {
  const { api, live } = useShed();
  const { words } = useReader();
  const said = words.setup.place;
  const sending = useSending();
  const [kind, setKind] = useState<PlaceKind>('rack');
  const [done, setDone] = useState('');

  async function make(form: FormData, element: HTMLFormElement): Promise<void> {
    const place = await sending.send((id) =>
      api.call('createPlace', { body: { id, ...placeOf(form, kind) } }),
    );
    if (place === null) return;
    element.reset();
    setDone(said.made(place.name));
    await live.refresh();
  }

  const { problem } = sending;
  const around = places.filter((place) => place.kind === 'room');
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={make}>
      <Choice
        legend={said.kind}
        name="kind"
        options={kinds.map((value) => ({ value, words: words.things.placeKinds[value] }))}
        value={kind}
        onChange={setKind}
      />
      <TextField
        label={said.name}
        name="name"
        pointer="/name"
        problem={problem}
        hint={said.nameHint}
      />
      {kind === 'rack' && (
        <SelectField label={said.within} name="within" pointer="/within" problem={problem}>
          <option value="">{said.inNone}</option>
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
        {said.make}
      </button>
      <p class="action-said" role="status">
        {done}
      </p>
    </WriteFrame>
  );
}

interface RackTakesProps {
  problem: Problem | null;
  /** Metric, as text; empty for none. */
  capacityM?: string;
  capacityBoards?: string;
}

/** How much lies on a rack, by length or by number. */
export function RackTakes({ problem, capacityM = '', capacityBoards = '' }: RackTakesProps) {
  const { place } = useReader().words.setup;
  return (
    <>
      <div class="field-grid">
        <MeasureField
          label={place.takes}
          name="capacityM"
          measure="lengthM"
          value={capacityM}
          pointer="/capacityM"
          problem={problem}
        />
        <TextField
          label={place.takesBoards}
          name="capacityBoards"
          kind="number"
          value={capacityBoards}
          pointer="/capacityBoards"
          problem={problem}
        />
      </div>
      <p class="field-hint">{place.takesHint}</p>
    </>
  );
}

function WallFacing({ problem }: { problem: Problem | null }) {
  const { setup } = useReader().words;
  const { place } = setup;
  return (
    <div class="field-grid">
      <SelectField label={place.facing} name="facing" pointer="/facing" problem={problem}>
        <option value="">{setup.notSaid}</option>
        {optionsOf(place.facings).map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </SelectField>
      <SelectField label={place.stands} name="exposure" pointer="/exposure" problem={problem}>
        <option value="">{setup.notSaid}</option>
        {optionsOf(place.exposures).map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </SelectField>
    </div>
  );
}

function placeOf(form: FormData, kind: PlaceKind): NewPlace {
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
    ...volumeOf(form),
    ...(facing === '' ? {} : { facing }),
    ...(exposure === '' ? {} : { exposure }),
  };
}
