import type { Problem } from '../../daemon/contract/problem.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { type Correctable, correctable } from './correction.ts';
import type { Entry } from './entry.ts';

/** Corrects what was refused and sends it again, in its place in the row. */
export function CorrectForm({ entry, problem }: { entry: Entry; problem: Problem }) {
  const { outbox } = useShed();
  const { offline } = useReader().words;
  const { fields, title } = offline.correct;
  const parts = correctable(entry, problem, Object.keys(fields));

  function read(form: FormData, { key, kind, value }: Correctable): unknown {
    if (kind === 'number') return numberOf(form, key);
    if (kind === 'text') return textOf(form, key) || null;
    const typed = textOf(form, key);
    // To the minute it may be as it was: then its seconds stay.
    return typed === toLocalField(Date.parse(value)) ? value : fromLocalField(typed);
  }

  async function send(form: FormData): Promise<void> {
    const changed = Object.fromEntries(parts.map((part) => [part.key, read(form, part)]));
    await outbox.correct(entry.id, { ...entry.given.body, ...changed });
  }

  return (
    <details class="more" open>
      <summary>{title}</summary>
      <WriteFrame problem={null} busy={false} onSend={send}>
        {parts.map(({ key, kind, value }) => {
          const field = {
            label: fields[key as keyof typeof fields],
            name: key,
            pointer: `/${key}`,
            problem,
          };
          if (key === 'usedL') {
            return <MeasureField key={key} {...field} measure="litres" value={value} />;
          }
          return kind === 'moment' ? (
            <TextField
              key={key}
              {...field}
              kind="datetime-local"
              value={toLocalField(Date.parse(value))}
            />
          ) : (
            <TextField
              key={key}
              {...field}
              kind={kind === 'number' ? 'number' : 'text'}
              value={value}
            />
          );
        })}
        <button type="submit" class="button button-main">
          {offline.sendAgain}
        </button>
      </WriteFrame>
    </details>
  );
}
