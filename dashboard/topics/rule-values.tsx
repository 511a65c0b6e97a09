import { useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { PayloadKind, RuleValue } from '../../daemon/contract/topic-rule.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { quantityWords } from '../words/thing-words.ts';
import { unitWords } from '../words/topic-words.ts';

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
  const [quantity, setQuantity] = useState<Quantity>(value.quantity);
  const at = `/values/${index}`;
  return (
    <fieldset class="rule-value">
      <legend>{index === 0 ? 'What it brings' : 'And'}</legend>
      <div class="rule-value-fields">
        <SelectField
          label="Quantity"
          name={`quantity-${row}`}
          value={quantity}
          onChange={(chosen) => setQuantity(chosen as Quantity)}
          pointer={`${at}/quantity`}
          problem={problem}
        >
          {Object.entries(quantityWords).map(([word, { name }]) => (
            <option key={word} value={word}>
              {name}
            </option>
          ))}
        </SelectField>
        {payload === 'json' && (
          <TextField
            label="Where it stands"
            name={`place-${row}`}
            value={value.pointer ?? ''}
            pointer={`${at}/pointer`}
            problem={problem}
            hint="like /data/temp, or /0/t in a list"
          />
        )}
        {payload === 'senml' && (
          <TextField
            label="End of its name"
            name={`place-${row}`}
            value={value.name ?? ''}
            pointer={`${at}/name`}
            problem={problem}
            hint="what comes after the last / : or ."
          />
        )}
        {payload !== 'senml' && (
          <>
            <SelectField
              label="Its unit"
              name={`unit-${row}`}
              value={value.unit ?? unitWords[quantity][0] ?? ''}
              pointer={`${at}/unit`}
              problem={problem}
            >
              {unitWords[quantity].map((unit) => (
                <option key={unit} value={unit}>
                  {unit}
                </option>
              ))}
            </SelectField>
            <TextField
              label="Times"
              name={`scale-${row}`}
              kind="number"
              value={value.scale === undefined ? '' : String(value.scale)}
              pointer={`${at}/scale`}
              problem={problem}
              hint="0.1 for tenths"
            />
          </>
        )}
        <TextField
          label="Another sensor"
          name={`sensor-${row}`}
          value={value.sensor ?? ''}
          pointer={`${at}/sensor`}
          problem={problem}
          hint="if one message has several"
        />
      </div>
      {onRemove !== null && (
        <button type="button" class="button button-quiet" onClick={onRemove}>
          Leave {quantityWords[quantity].name.toLowerCase()} out
        </button>
      )}
    </fieldset>
  );
}
