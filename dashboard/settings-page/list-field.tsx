import { useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { ListedSetting } from '../../daemon/contract/setting.ts';
import { monthNames, weekdayNames } from '../format/calendar-names.ts';
import { faultAt } from '../forms/fault.ts';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { measureIn } from './setting-value.ts';
import { isOfFixedLength, VALUE } from './setting-wish.ts';

interface ListFieldProps {
  setting: ListedSetting;
  problem: Problem | null;
}

const MONTHS = 12;

/** Several values of one kind: ticked where they are a choice, else a line each. */
export function ListField({ setting, problem }: ListFieldProps) {
  const { settings: said } = useReader().words;
  const pointer = `/settings/${setting.name}`;
  // Faults of single lines stand at those.
  const ownFault = problem?.errors?.some((error) => error.pointer.startsWith(`${pointer}/`))
    ? null
    : faultAt(problem, pointer);
  return (
    <fieldset class="choice setting-list">
      <legend>{said.newValue[setting.holds]}</legend>
      {setting.entries?.takes === 'choice' ? (
        <Ticked setting={setting} />
      ) : (
        <Lines setting={setting} problem={problem} />
      )}
      {ownFault !== null && (
        <p class="field-fault">
          <Said sentence={ownFault} />
        </p>
      )}
    </fieldset>
  );
}

const entriesOf = ({ next }: ListedSetting): string[] =>
  Array.isArray(next) ? next.map(String) : [];

function Ticked({ setting }: { setting: ListedSetting }) {
  const { locale } = useReader();
  const names: Readonly<Record<string, string>> = weekdayNames(locale);
  const ticked = entriesOf(setting);
  return (
    <div class="choice-row">
      {setting.entries?.choices.map((value) => (
        <label key={value} class="choice-option">
          <input
            type="checkbox"
            name={VALUE}
            value={value}
            defaultChecked={ticked.includes(value)}
          />
          <span>{names[value] ?? value}</span>
        </label>
      ))}
    </div>
  );
}

function Lines({ setting, problem }: ListFieldProps) {
  const { words, figures, locale } = useReader();
  const { settings: said } = words;
  const { unit, entries } = setting;
  const fixed = isOfFixedLength(setting) ? (entries?.fewest ?? 0) : null;
  const [begun] = useState(entriesOf(setting));
  const [count, setCount] = useState(fixed ?? Math.max(1, begun.length));
  const isNumber = entries?.takes !== 'text';
  const measure = isNumber ? measureIn(unit) : null;
  const months = fixed === MONTHS ? monthNames(locale) : null;
  return (
    <>
      <div class="setting-lines">
        {Array.from({ length: count }, (_, i) => {
          const line = {
            label: months?.[i] ?? said.entry(figures.number(i + 1)),
            name: VALUE,
            pointer: `/settings/${setting.name}/${i}`,
            problem,
            value: begun[i] ?? '',
          };
          if (measure !== null)
            return <MeasureField key={line.pointer} {...line} measure={measure} />;
          const own = unit === null ? {} : { unit };
          return (
            <TextField key={line.pointer} {...line} {...own} kind={isNumber ? 'number' : 'text'} />
          );
        })}
      </div>
      {fixed === null && <p class="field-hint">{said.emptyOut}</p>}
      {fixed === null && count < (entries?.atMost ?? Number.POSITIVE_INFINITY) && (
        <button type="button" class="button button-quiet" onClick={() => setCount(count + 1)}>
          {said.another}
        </button>
      )}
    </>
  );
}
