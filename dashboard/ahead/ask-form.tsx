import { useRef, useState } from 'preact/hooks';
import type { PlanAheadQuery } from '../../daemon/contract/plan-ahead.ts';
import { TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useFirstFault } from '../forms/use-first-fault.ts';
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
  const [fault, setFault] = useState<{ said: string } | null>(null);
  const form = useRef<HTMLFormElement>(null);
  useFirstFault(form, fault);
  return (
    <form
      class="form-body"
      ref={form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const typed = new FormData(event.currentTarget);
        const boards = numberOf(typed, 'boards');
        if (textOf(typed, 'boards') === '') {
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
        } else setFault({ said: ask.fault(figures.number(1), figures.number(mostBoards)) });
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
        fault={fault?.said ?? null}
      />
      <button type="submit" class="button">
        {ask.button}
      </button>
    </form>
  );
}
