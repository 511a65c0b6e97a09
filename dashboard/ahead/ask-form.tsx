import { useState } from 'preact/hooks';
import type { PlanAheadQuery } from '../../daemon/contract/plan-ahead.ts';
import { TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useReader } from '../reader.ts';

interface AskFormProps {
  asked: PlanAheadQuery;
  onAsk: (asked: PlanAheadQuery) => void;
}

/** As many as the daemon takes. */
const mostBoards = 100_000;

/** Asks when boards would be done that are not here yet; records nothing. */
export function AskForm({ asked, onAsk }: AskFormProps) {
  const { words, figures } = useReader();
  const { ask } = words.ahead;
  const [fault, setFault] = useState<string | null>(null);
  return (
    <form
      class="form-body"
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
          boards <= mostBoards
        ) {
          setFault(null);
          onAsk({ boards });
        } else setFault(ask.fault(figures.number(1), figures.number(mostBoards)));
      }}
    >
      <TextField
        label={ask.label}
        name="boards"
        kind="number"
        unit={ask.unit}
        pointer="/boards"
        problem={null}
        {...(asked.boards === undefined ? {} : { value: String(asked.boards) })}
        hint={ask.hint}
      />
      {fault !== null && (
        <p class="field-fault" role="alert">
          {fault}
        </p>
      )}
      <button type="submit" class="button">
        {ask.button}
      </button>
    </form>
  );
}
