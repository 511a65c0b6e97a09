import { useState } from 'preact/hooks';
import type { Batch, NewBatch } from '../../daemon/contract/batch.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { type Told, useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { optionsOf } from './options.ts';

type Timber = Batch['timber'];

interface TimberFieldsProps {
  last: Timber | null;
  problem: Problem | null;
  leadCaution: Told | null;
}

/** What is known of the timber: before, delivered, kept, what it lies on, knots. */
export function TimberFields({ last, problem, leadCaution }: TimberFieldsProps) {
  const said = useReader().words.setup.timber;
  const [state, setState] = useState(last?.stateBefore ?? 'new');
  const mayHoldLead = state === 'painted' || state === 'unknown';
  return (
    <>
      <Choice
        legend={said.before}
        name="stateBefore"
        options={optionsOf(said.states)}
        value={state}
        onChange={setState}
      />
      {mayHoldLead && leadCaution !== null && (
        <p class="caution">
          <Said sentence={leadCaution} />
        </p>
      )}
      <Kept
        legend={said.restOn}
        name="support"
        options={optionsOf(said.supports)}
        at={last?.support}
      />
      <details class="more">
        <summary>{said.more}</summary>
        <div class="when-field">
          <TextField
            label={said.delivered}
            name="deliveredAt"
            kind="datetime-local"
            value={last?.deliveredAt ? toLocalField(Date.parse(last.deliveredAt)) : ''}
            pointer="/deliveredAt"
            problem={problem}
          />
          <Kept
            legend={said.storedSince}
            name="storedHow"
            options={optionsOf(said.stored)}
            at={last?.storedHow}
          />
          <Kept
            legend={said.knotsAndResin}
            name="knots"
            options={optionsOf(said.knots)}
            at={last?.knots}
          />
        </div>
      </details>
    </>
  );
}

interface KeptProps<T extends string> {
  legend: string;
  name: string;
  options: readonly { value: T; words: string }[];
  at: T | null | undefined;
}

/** A choice that may be left open. */
function Kept<T extends string>({ legend, name, options, at }: KeptProps<T>) {
  const { notSaid } = useReader().words.setup;
  const [value, setValue] = useState<T | ''>(at ?? '');
  return (
    <Choice<T | ''>
      legend={legend}
      name={name}
      options={[{ value: '', words: notSaid }, ...options]}
      value={value}
      onChange={setValue}
    />
  );
}

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
