import { useState } from 'preact/hooks';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { closesOnEscape } from '../forms/escape.ts';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { type PlaceFields, placeChange } from './place-change.ts';
import { RackTakes } from './place-form.tsx';

/** The places there are; each can be renamed, and told better what it takes or holds. */
export function PlaceList({ places }: { places: readonly OverviewPlace[] }) {
  const { words } = useReader();
  const said = words.setup.places;
  const [open, setOpen] = useState<string | null>(null);
  const close = () => setOpen(null);
  if (places.length === 0) return null;
  return (
    <details class="more">
      <summary>{said.toChange(places.length)}</summary>
      <ul>
        {places.map((place) => (
          <li
            key={place.id}
            class="sensor"
            onKeyDown={open === place.id ? closesOnEscape(close, `change-${place.id}`) : undefined}
          >
            <h3>
              {place.name} <small class="ahead-small">{words.things.placeKinds[place.kind]}</small>
            </h3>
            <button
              type="button"
              id={`change-${place.id}`}
              class="button button-quiet"
              aria-expanded={open === place.id}
              aria-label={said.changeIt(place.name)}
              onClick={() => setOpen(open === place.id ? null : place.id)}
            >
              {said.change}
            </button>
            {open === place.id && <ChangeForm place={place} onChanged={close} />}
          </li>
        ))}
      </ul>
    </details>
  );
}

function ChangeForm({ place, onChanged }: { place: OverviewPlace; onChanged: () => void }) {
  const { api, live } = useShed();
  const { setup } = useReader().words;
  const sending = useSending();
  const { problem } = sending;
  // What the form began with: somebody else may change the place while it is open.
  const [opened, setOpened] = useState<PlaceFields>(place);
  const [wasChanged, setWasChanged] = useState(false);

  async function change(form: FormData): Promise<void> {
    // Asked for anew: the page may not have heard yet of what somebody did a moment ago.
    const there = await sending.send(() => api.call('readPlace', { params: { id: place.id } }));
    if (there === null) return;
    const { body, both } = placeChange(opened, there, {
      name: textOf(form, 'name'),
      ...(place.kind === 'room' ? { volumeM3: optionalNumberOf(form, 'volumeM3') } : {}),
      ...(place.kind === 'rack'
        ? {
            capacityM: optionalNumberOf(form, 'capacityM'),
            capacityBoards: optionalNumberOf(form, 'capacityBoards'),
          }
        : {}),
    });
    if (both.length > 0) {
      // Seen now: pressed again, what is typed here is what holds.
      setOpened((before) => ({
        ...before,
        ...Object.fromEntries(both.map((field) => [field, there[field]])),
      }));
      setWasChanged(true);
      return;
    }
    const done = await sending.send(() =>
      api.call('changePlace', { params: { id: place.id }, body }),
    );
    if (done === null) return;
    await live.refresh();
    onChanged();
  }

  const figureOf = (value: number | null) => (value === null ? '' : String(value));
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={change}>
      <TextField
        label={setup.place.name}
        name="name"
        pointer="/name"
        problem={problem}
        value={place.name}
      />
      {place.kind === 'room' && (
        <MeasureField
          label={setup.place.holdsAir}
          name="volumeM3"
          measure="volumeM3"
          pointer="/volumeM3"
          problem={problem}
          value={figureOf(place.volumeM3)}
        />
      )}
      {place.kind === 'rack' && (
        <RackTakes
          problem={problem}
          capacityM={figureOf(place.capacityM)}
          capacityBoards={figureOf(place.capacityBoards)}
        />
      )}
      {wasChanged && (
        <p class="field-fault" role="alert">
          {setup.places.changedMeanwhile}
        </p>
      )}
      <button type="submit" class="button button-main">
        {setup.places.keep}
      </button>
    </WriteFrame>
  );
}
