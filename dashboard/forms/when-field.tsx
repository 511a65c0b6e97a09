import { useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { useReader } from '../reader.ts';
import { Choice } from './choice.tsx';
import { TextField } from './field.tsx';

interface WhenFieldProps {
  legend: string;
  name: string;
  pointer: string;
  problem: Problem | null;
  /** The daemon’s time, UTC epoch ms, as a start for another time. */
  now: number;
}

/** “Just now”, or another time: hardly anyone has to type one. */
export function WhenField({ legend, name, pointer, problem, now }: WhenFieldProps) {
  const words = useReader().words.forms.when;
  const [kind, setKind] = useState<'now' | 'other'>('now');
  return (
    <div class="when-field">
      <Choice
        legend={legend}
        name={`${name}-kind`}
        options={[
          { value: 'now', words: words.justNow },
          { value: 'other', words: words.another },
        ]}
        value={kind}
        onChange={setKind}
      />
      {kind === 'other' && (
        <TextField
          label={words.dateAndTime}
          name={name}
          kind="datetime-local"
          value={toLocalField(now)}
          pointer={pointer}
          problem={problem}
        />
      )}
    </div>
  );
}

/**
 * The moment a `WhenField` stands for.
 *
 * @param now - the daemon’s time, UTC epoch ms, taken for “just now”
 * @returns ISO 8601 as the contract wants it
 */
export function whenOf(form: FormData, name: string, now: number): string {
  const typed = form.get(name);
  return typeof typed === 'string' ? fromLocalField(typed) : new Date(now).toISOString();
}
