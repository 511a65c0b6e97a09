import { useState } from 'preact/hooks';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { isTemperature, unitOfQuantity } from '../format/reading.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { pointerOf } from '../forms/value-pointer.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { type ActionProps, about } from './action-props.ts';

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
  const { live } = useShed();
  const { words, figures } = useReader();
  const { meter, kept } = words.actions;
  const sending = useSending();
  const [quantity, setQuantity] = useState<Quantity>('wood-moisture');
  const [sent, setSent] = useState<readonly number[]>([]);

  async function record(form: FormData): Promise<void> {
    const typed = READINGS.filter((at) => textOf(form, `value-${at}`) !== '');
    setSent(typed);
    const reading = await sending.record('createReading', about(batch), (id) => ({
      body: {
        id,
        batchId: batch.id,
        quantity,
        values: typed.map((at) => numberOf(form, `value-${at}`)),
        at: new Date(live.clock().shedNow).toISOString(),
      },
    }));
    if (reading === null) return;
    onDone(reading.kind === 'waits' ? kept : meter.recorded(reading.reply.values.length));
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField
        label={meter.shows}
        name="quantity"
        value={quantity}
        onChange={(value) => setQuantity(value as Quantity)}
        pointer="/quantity"
        problem={sending.problem}
      >
        {metered.map((value) => (
          <option key={value} value={value}>
            {meter.quantity(words.things.quantities[value], unitOfQuantity(value, { figures }))}
          </option>
        ))}
      </SelectField>
      <div class="field-grid field-grid-five">
        {READINGS.map((at) => {
          const field = {
            label: meter.board(figures.number(at + 1)),
            name: `value-${at}`,
            pointer: pointerOf(at, sent),
            problem: sending.problem,
          };
          return isTemperature(quantity) ? (
            <MeasureField key={`${at} tempC`} {...field} measure="tempC" />
          ) : (
            <TextField
              key={at}
              {...field}
              kind="number"
              unit={unitOfQuantity(quantity, { figures })}
            />
          );
        })}
      </div>
      <button type="submit" class="button button-main">
        {meter.record}
      </button>
    </WriteFrame>
  );
}
