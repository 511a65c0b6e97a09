import { useState } from 'preact/hooks';
import type { PlanAheadQuery } from '../../daemon/contract/plan-ahead.ts';
import { TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';

interface AskFormProps {
  asked: PlanAheadQuery;
  onAsk: (asked: PlanAheadQuery) => void;
}

/** Asks when boards would be done that are not here yet; records nothing. */
export function AskForm({ asked, onAsk }: AskFormProps) {
  const [fault, setFault] = useState<string | null>(null);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        const form = new FormData(event.currentTarget);
        const boards = numberOf(form, 'boards');
        if (textOf(form, 'boards') === '') {
          setFault(null);
          onAsk({});
        } else if (
          typeof boards === 'number' &&
          Number.isInteger(boards) &&
          boards >= 1 &&
          boards <= 100_000
        ) {
          setFault(null);
          onAsk({ boards });
        } else setFault('A whole number of boards from 1 to 100,000, or nothing.');
      }}
    >
      <TextField
        label="Further boards, like those of the newest batch"
        name="boards"
        kind="number"
        unit="boards"
        pointer="/boards"
        problem={null}
        {...(asked.boards === undefined ? {} : { value: String(asked.boards) })}
        hint="Nothing is recorded by asking."
      />
      {fault !== null && (
        <p class="field-fault" role="alert">
          {fault}
        </p>
      )}
      <button type="submit" class="button">
        When would they be done?
      </button>
    </form>
  );
}
