import { useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { PayloadKind, RuleValue } from '../../daemon/contract/topic-rule.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { useReader } from '../reader.ts';
import { FRACTION, unitsTaken } from './units-taken.ts';

interface RuleValueRowProps {
  /** Names its fields. */
  row: number;
  /** Where it stands among the values. */
  index: number;
  payload: PayloadKind;
  value: RuleValue;
  problem: Problem | null;
  /** Null where it is the only one. */
  onRemove: (() => void) | null;
}

/** One quantity of a rule: where it stands in the message, and in what unit. */
export function RuleValueRow(props: RuleValueRowProps) {
  const { row, index, payload, value, problem, onRemove } = props;
  const { things, topics } = useReader().words;
  const words = topics.value;
  const [quantity, setQuantity] = useState<Quantity>(value.quantity);
  const at = `/values/${index}`;
  return (
    <fieldset class="rule-value">
      <legend>{index === 0 ? words.first : words.further}</legend>
      <div class="rule-value-fields">
        <SelectField
          label={words.quantity}
          name={`quantity-${row}`}
          value={quantity}
          onChange={(chosen) => setQuantity(chosen as Quantity)}
          pointer={`${at}/quantity`}
          problem={problem}
        >
          {Object.entries(things.quantities).map(([word, name]) => (
            <option key={word} value={word}>
              {name}
            </option>
          ))}
        </SelectField>
        {payload === 'json' && (
          <TextField
            label={words.pointer}
            name={`place-${row}`}
            value={value.pointer ?? ''}
            pointer={`${at}/pointer`}
            problem={problem}
            hint={words.pointerHint}
          />
        )}
        {payload === 'senml' && (
          <TextField
            label={words.name}
            name={`place-${row}`}
            value={value.name ?? ''}
            pointer={`${at}/name`}
            problem={problem}
            hint={words.nameHint}
          />
        )}
        {payload !== 'senml' && (
          <>
            <SelectField
              label={words.unit}
              name={`unit-${row}`}
              value={value.unit ?? unitsTaken[quantity][0] ?? ''}
              pointer={`${at}/unit`}
              problem={problem}
            >
              {unitsTaken[quantity].map((unit) => (
                <option key={unit} value={unit}>
                  {unit === FRACTION ? words.fraction : unit}
                </option>
              ))}
            </SelectField>
            <TextField
              label={words.times}
              name={`scale-${row}`}
              kind="number"
              value={value.scale === undefined ? '' : String(value.scale)}
              pointer={`${at}/scale`}
              problem={problem}
              hint={words.timesHint}
            />
          </>
        )}
        <TextField
          label={words.otherSensor}
          name={`sensor-${row}`}
          value={value.sensor ?? ''}
          pointer={`${at}/sensor`}
          problem={problem}
          hint={words.otherSensorHint}
        />
      </div>
      {onRemove !== null && (
        <button type="button" class="button button-quiet" onClick={onRemove}>
          {words.leaveOut(things.quantitiesWithin[quantity])}
        </button>
      )}
    </fieldset>
  );
}
