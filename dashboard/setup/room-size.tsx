import { useState } from 'preact/hooks';
import type { NewPlace } from '../../daemon/contract/place.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { MeasureField } from '../forms/measure-field.tsx';
import { optionalNumberOf } from '../forms/typed.ts';
import { useReader } from '../reader.ts';

const sides = ['length', 'width', 'height'] as const;

/** How large a room is, typed in metres or feet; what it holds is told at once. */
export function RoomSize({ problem }: { problem: Problem | null }) {
  const { words, figures } = useReader();
  const { place } = words.setup;
  const [typed, setTyped] = useState<Partial<Record<(typeof sides)[number], string>>>({});
  const volumeM3 = sides.reduce((volume, side) => volume * Number(typed[side] || Number.NaN), 1);
  return (
    <>
      <div class="field-grid field-grid-three">
        {sides.map((side) => (
          <MeasureField
            key={side}
            label={place[side]}
            name={side}
            measure="lengthM"
            limitsOf="volumeM3"
            pointer={side === 'height' ? '/volumeM3' : ''}
            problem={side === 'height' ? problem : null}
            onMetric={(value) => setTyped((before) => ({ ...before, [side]: value }))}
          />
        ))}
      </div>
      {volumeM3 > 0 && (
        <p class="field-hint">{place.volume(figures.measure('volumeM3', volumeM3))}</p>
      )}
    </>
  );
}

/** A room measured by half has no volume: NaN is sent as null, so it is left out instead. */
export function volumeOf(form: FormData): Pick<NewPlace, 'volumeM3'> {
  const measured = sides.map((side) => optionalNumberOf(form, side)).filter((one) => one !== null);
  return measured.length === sides.length
    ? { volumeM3: measured.reduce((volume, side) => volume * side, 1) }
    : {};
}
