import { useState } from 'preact/hooks';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { quantityWords } from '../words/thing-words.ts';
import type { ActionProps } from './action-props.ts';

/** One reading says little; five on different boards say something. Common practice, no source. */
const READINGS = [0, 1, 2, 3, 4] as const;
const metered: readonly Quantity[] = [
  'wood-moisture',
  'surface-temperature',
  'air-temperature',
  'relative-humidity',
];

/** Records what a hand meter showed, five boards at a time. */
export function MeterForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [quantity, setQuantity] = useState<Quantity>('wood-moisture');
  const [sent, setSent] = useState<readonly number[]>([]);
  const { unit } = quantityWords[quantity];

  async function record(form: FormData): Promise<void> {
    const typed = READINGS.filter((at) => textOf(form, `value-${at}`) !== '');
    setSent(typed);
    const reading = await sending.send((id) =>
      api.call('createReading', {
        body: {
          id,
          batchId: batch.id,
          quantity,
          values: typed.map((at) => numberOf(form, `value-${at}`)),
          at: new Date(live.now.peek()).toISOString(),
        },
      }),
    );
    if (reading !== null) onDone(`Recorded: ${reading.values.length} figures from the meter.`);
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField
        label="What the meter shows"
        name="quantity"
        value={quantity}
        onChange={(value) => setQuantity(value as Quantity)}
        pointer="/quantity"
        problem={sending.problem}
      >
        {metered.map((value) => (
          <option key={value} value={value}>
            {quantityWords[value].name}, {quantityWords[value].unit}
          </option>
        ))}
      </SelectField>
      <div class="field-grid field-grid-five">
        {READINGS.map((at) => (
          <TextField
            key={at}
            label={`Board ${at + 1}`}
            name={`value-${at}`}
            kind="number"
            unit={unit}
            pointer={`/values/${sent.indexOf(at)}`}
            problem={sending.problem}
          />
        ))}
      </div>
      <button type="submit" class="button button-main">
        Record the figures
      </button>
    </WriteFrame>
  );
}
