import { useState } from 'preact/hooks';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import type { PlaceChange } from '../../daemon/contract/place.ts';
import { TextField } from '../forms/field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { placeKindWords } from '../words/thing-words.ts';

/** The places there are; each can be renamed, and told better what it takes or holds. */
export function PlaceList({ places }: { places: readonly OverviewPlace[] }) {
  const [open, setOpen] = useState<string | null>(null);
  if (places.length === 0) return null;
  return (
    <details class="more">
      <summary>
        {places.length} {places.length === 1 ? 'place' : 'places'}, to change
      </summary>
      <ul>
        {places.map((place) => (
          <li key={place.id} class="sensor">
            <h3>
              {place.name} <small class="ahead-small">{placeKindWords[place.kind]}</small>
            </h3>
            <button
              type="button"
              class="button button-quiet"
              aria-expanded={open === place.id}
              aria-label={`Change ${place.name}`}
              onClick={() => setOpen(open === place.id ? null : place.id)}
            >
              Change
            </button>
            {open === place.id && <ChangeForm place={place} onChanged={() => setOpen(null)} />}
          </li>
        ))}
      </ul>
    </details>
  );
}

function ChangeForm({ place, onChanged }: { place: OverviewPlace; onChanged: () => void }) {
  const { api, live } = useShed();
  const sending = useSending();
  const { problem } = sending;

  async function change(form: FormData): Promise<void> {
    const body: PlaceChange = {
      name: textOf(form, 'name'),
      ...(place.kind === 'room' ? { volumeM3: optionalNumberOf(form, 'volumeM3') } : {}),
      ...(place.kind === 'rack'
        ? {
            capacityM: optionalNumberOf(form, 'capacityM'),
            capacityBoards: optionalNumberOf(form, 'capacityBoards'),
          }
        : {}),
    };
    const done = await sending.send(() =>
      api.call('changePlace', { params: { id: place.id }, body }),
    );
    if (done === null) return;
    await live.refresh();
    onChanged();
  }

  const figureOf = (value: number | null) => (value === null ? {} : { value: String(value) });
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={change}>
      <TextField label="Name" name="name" pointer="/name" problem={problem} value={place.name} />
      {place.kind === 'room' && (
        <TextField
          label="Holds"
          name="volumeM3"
          kind="number"
          unit="m³ of air"
          pointer="/volumeM3"
          problem={problem}
          {...figureOf(place.volumeM3)}
        />
      )}
      {place.kind === 'rack' && (
        <div class="field-grid">
          <TextField
            label="Takes"
            name="capacityM"
            kind="number"
            unit="m of boards"
            pointer="/capacityM"
            problem={problem}
            {...figureOf(place.capacityM)}
          />
          <TextField
            label="Or so many"
            name="capacityBoards"
            kind="number"
            unit="boards"
            pointer="/capacityBoards"
            problem={problem}
            {...figureOf(place.capacityBoards)}
          />
        </div>
      )}
      <button type="submit" class="button button-main">
        Keep the change
      </button>
    </WriteFrame>
  );
}
