import type { Species } from '../../daemon/contract/batch.ts';
import type { Sensor, SensorHeight } from '../../daemon/contract/sensor.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

/** How high a sensor hangs, and for a wood probe the timber it sits in. */
export function SensorTraits({ sensor, onChanged }: { sensor: Sensor; onChanged: () => void }) {
  const { api } = useShed();
  const { things, trust } = useReader().words;
  const words = trust.traits;
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
      <summary>{words.fold(label)}</summary>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={describe}>
        <SelectField
          label={words.height(label)}
          name="height"
          value={sensor.height ?? ''}
          pointer="/height"
          problem={sending.problem}
          hint={words.heightHint}
        >
          <option value="">{words.notSaid}</option>
          {Object.entries(words.heights).map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </SelectField>
        {isProbe && (
          <SelectField
            label={words.timber(label)}
            name="species"
            value={sensor.species ?? ''}
            pointer="/species"
            problem={sending.problem}
          >
            <option value="">{words.timberOfBatch}</option>
            {Object.entries(things.species).map(([value, name]) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </SelectField>
        )}
        <button type="submit" class="button">
          {words.keep}
        </button>
      </WriteFrame>
    </details>
  );
}
