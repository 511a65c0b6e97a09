import type { BatchSummary } from '../../daemon/contract/batch.ts';
import { Framed, SelectField, TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useReader } from '../reader.ts';
import { recordsAddress } from '../router.ts';
import { optionsOf } from '../setup/options.ts';
import { type Asked, addressWith, askedOf } from './record-query.ts';

interface RecordFiltersProps {
  asked: Asked;
  batches: readonly BatchSummary[];
}

/** What to look for; it goes into the address. */
export function RecordFilters({ asked, batches }: RecordFiltersProps) {
  const { records: said } = useReader().words;
  const field = { pointer: '', problem: null };

  function show(form: FormData): void {
    const typed = Object.fromEntries(
      ['q', 'kind', 'batch', 'from', 'to', 'closed'].map((name) => [name, textOf(form, name)]),
    );
    // Only what the address can say: an empty choice is left out of it.
    const { q, kind, batch, from, to, closed } = askedOf(new URLSearchParams(typed));
    const closing = closed === 'with' ? '' : closed;
    location.hash = addressWith(asked, { q, kind, batch, from, to, closed: closing });
  }

  return (
    <form
      class="form records-filters"
      onSubmit={(event) => {
        event.preventDefault();
        show(new FormData(event.currentTarget));
      }}
    >
      <div class="form-body">
        <TextField {...field} label={said.search} name="q" value={asked.q} hint={said.searchHint} />
        <SelectField {...field} label={said.kind} name="kind">
          <option value="">{said.all}</option>
          {optionsOf(said.kinds).map(({ value, words }) => (
            <option key={value} value={value} selected={value === asked.kind}>
              {words}
            </option>
          ))}
        </SelectField>
        <SelectField {...field} label={said.batch} name="batch">
          <option value="">{said.all}</option>
          {batches.map(({ id, name }) => (
            <option key={id} value={id} selected={id === asked.batch}>
              {name}
            </option>
          ))}
        </SelectField>
        <div class="field-grid">
          <DayField label={said.from} name="from" value={asked.from} />
          <DayField label={said.until} name="to" value={asked.to} />
        </div>
        <SelectField {...field} label={said.finished} name="closed">
          {optionsOf(said.closed).map(({ value, words }) => (
            <option key={value} value={value} selected={value === (asked.closed || 'with')}>
              {words}
            </option>
          ))}
        </SelectField>
        <button type="submit" class="button button-main">
          {said.show}
        </button>
        <a href={recordsAddress()}>{said.everything}</a>
      </div>
    </form>
  );
}

function DayField({ label, name, value }: { label: string; name: string; value: string }) {
  return (
    <Framed label={label} pointer="" problem={null}>
      {(attributes) => (
        <input {...attributes} class="input" type="date" name={name} defaultValue={value} />
      )}
    </Framed>
  );
}
