import type { Species } from '../../daemon/contract/batch.ts';
import type { Sensor, SensorHeight } from '../../daemon/contract/sensor.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { speciesWords } from '../words/thing-words.ts';
import { heightWords } from '../words/trust-words.ts';

/** How high a sensor hangs, and for a wood probe the timber it sits in. */
export function SensorTraits({ sensor, onChanged }: { sensor: Sensor; onChanged: () => void }) {
  const { api } = useShed();
  const sending = useSending();
  const label = sensor.name ?? sensor.id;
  const isProbe = sensor.wood !== null;

  async function describe(form: FormData): Promise<void> {
    const height = (textOf(form, 'height') || null) as SensorHeight | null;
    const species = isProbe ? { species: (textOf(form, 'species') || null) as Species | null } : {};
    const done = await sending.send(() =>
      api.call('changeSensor', { params: { id: sensor.id }, body: { height, ...species } }),
    );
    if (done !== null) onChanged();
  }

  return (
    <details class="more">
      <summary>How {label} hangs</summary>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={describe}>
        <SelectField
          label={`Height of ${label}`}
          name="height"
          value={sensor.height ?? ''}
          pointer="/height"
          problem={sending.problem}
          hint="Alone and not on the bottom shelf, the floor is taken to be colder."
        >
          <option value="">not said</option>
          {Object.entries(heightWords).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </SelectField>
        {isProbe && (
          <SelectField
            label={`Timber that ${label} sits in`}
            name="species"
            value={sensor.species ?? ''}
            pointer="/species"
            problem={sending.problem}
          >
            <option value="">that of the batch there</option>
            {Object.entries(speciesWords).map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </SelectField>
        )}
        <button type="submit" class="button">
          Keep it
        </button>
      </WriteFrame>
    </details>
  );
}
