import type { Problem } from '../../daemon/contract/problem.ts';
import type { RouteSend } from '../../daemon/contract/routes.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, optionalNumberOf, textOf } from '../forms/typed.ts';

/** How full the last pot still is, as one sees it. */
const fills = [
  { percent: 0, words: 'empty' },
  { percent: 25, words: 'a quarter full' },
  { percent: 50, words: 'half full' },
  { percent: 75, words: 'three quarters full' },
] as const;

/** What was used, as somebody at the bench tells it: how many pots, how full is the last. */
export function PotsFields({ problem }: { problem: Problem | null }) {
  return (
    <div class="field-grid field-grid-three">
      <TextField
        label="Or: pots mixed"
        name="pots"
        kind="number"
        pointer="/pots/count"
        problem={problem}
      />
      <TextField
        label="Mixed in each"
        name="litresEach"
        kind="number"
        unit="L"
        pointer="/pots/litresEach"
        problem={problem}
      />
      <SelectField
        label="The last one is still"
        name="lastLeft"
        value="0"
        pointer="/pots/lastLeftPercent"
        problem={problem}
      >
        {fills.map(({ percent, words }) => (
          <option key={percent} value={String(percent)}>
            {words}
          </option>
        ))}
      </SelectField>
    </div>
  );
}

/** The pots of a form; null where nobody counted any. */
export function potsOf(form: FormData): RouteSend<'createCoat'>['body']['pots'] {
  const count = optionalNumberOf(form, 'pots');
  if (count === null) return null;
  return {
    count,
    litresEach: numberOf(form, 'litresEach'),
    lastLeftPercent: Number(textOf(form, 'lastLeft') || 0),
  };
}
