import { useState } from 'preact/hooks';
import type { Batch, NewBatch } from '../../daemon/contract/batch.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { knotsWords, stateBeforeWords, storedWords, supportWords } from '../words/trade-words.ts';

type Timber = Batch['timber'];

interface TimberFieldsProps {
  last: Timber | null;
  problem: Problem | null;
  leadCaution: string | null;
}

/** What is known of the timber: before, delivered, kept, what it lies on, knots. */
export function TimberFields({ last, problem, leadCaution }: TimberFieldsProps) {
  const [state, setState] = useState(last?.stateBefore ?? 'new');
  const mayHoldLead = state === 'painted' || state === 'unknown';
  return (
    <>
      <Choice
        legend="Before it came to you"
        name="stateBefore"
        options={optionsOf(stateBeforeWords)}
        value={state}
        onChange={setState}
      />
      {mayHoldLead && leadCaution !== null && <p class="caution">{leadCaution}</p>}
      <Kept
        legend="What the boards rest on"
        name="support"
        words={supportWords}
        at={last?.support}
      />
      <details class="more">
        <summary>Delivered, stored, knots</summary>
        <div class="when-field">
          <TextField
            label="Delivered"
            name="deliveredAt"
            kind="datetime-local"
            value={last?.deliveredAt ? toLocalField(Date.parse(last.deliveredAt)) : ''}
            pointer="/deliveredAt"
            problem={problem}
          />
          <Kept legend="Stored since" name="storedHow" words={storedWords} at={last?.storedHow} />
          <Kept legend="Knots and resin" name="knots" words={knotsWords} at={last?.knots} />
        </div>
      </details>
    </>
  );
}

interface KeptProps<T extends string> {
  legend: string;
  name: string;
  words: Readonly<Record<T, string>>;
  at: T | null | undefined;
}

/** A choice that may be left open. */
function Kept<T extends string>({ legend, name, words, at }: KeptProps<T>) {
  const [value, setValue] = useState<T | ''>(at ?? '');
  return (
    <Choice<T | ''>
      legend={legend}
      name={name}
      options={[{ value: '', words: 'not said' }, ...optionsOf(words)]}
      value={value}
      onChange={setValue}
    />
  );
}

const optionsOf = <T extends string>(words: Readonly<Record<T, string>>) =>
  (Object.entries(words) as [T, string][]).map(([value, text]) => ({ value, words: text }));

/** What the fields say, as the contract wants it. */
export function timberOf(
  form: FormData,
): Pick<NewBatch, 'stateBefore' | 'deliveredAt' | 'storedHow' | 'support' | 'knots'> {
  const said = <T extends string>(name: string) => (textOf(form, name) || null) as T | null;
  const delivered = textOf(form, 'deliveredAt');
  return {
    stateBefore: said('stateBefore'),
    deliveredAt: delivered === '' ? null : fromLocalField(delivered),
    storedHow: said('storedHow'),
    support: said('support'),
    knots: said('knots'),
  };
}
