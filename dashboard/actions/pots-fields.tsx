import type { Problem } from '../../daemon/contract/problem.ts';
import type { RouteSend } from '../../daemon/contract/routes.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { numberOf, optionalNumberOf, textOf } from '../forms/typed.ts';
import { useReader } from '../reader.ts';

/** How full the last pot still is, as one sees it, %. */
const fills = [0, 25, 50, 75] as const;

/** What was used, as somebody at the bench tells it: how many pots, how full is the last. */
export function PotsFields({ problem }: { problem: Problem | null }) {
  const { coat } = useReader().words.actions;
  return (
    <div class="field-grid field-grid-three">
      <TextField
        label={coat.pots}
        name="pots"
        kind="number"
        pointer="/pots/count"
        problem={problem}
      />
      <MeasureField
        label={coat.each}
        name="litresEach"
        measure="litres"
        pointer="/pots/litresEach"
        problem={problem}
      />
      <SelectField
        label={coat.lastLeft}
        name="lastLeft"
        value="0"
        pointer="/pots/lastLeftPercent"
        problem={problem}
      >
        {fills.map((percent) => (
          <option key={percent} value={String(percent)}>
            {coat.fills[percent]}
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
