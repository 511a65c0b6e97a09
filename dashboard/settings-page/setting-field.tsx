import { useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { ListedSetting } from '../../daemon/contract/setting.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { useReader } from '../reader.ts';
import { ListField } from './list-field.tsx';
import { measureIn, takesText, unitText } from './setting-value.ts';
import { HAS, VALUE } from './setting-wish.ts';

/** Settings that are a time of day say so by their unit. */
const CLOCK_UNIT = 'local time, hh:mm';

interface SettingFieldProps {
  setting: ListedSetting;
  problem: Problem | null;
}

/** What a setting is to be, typed or chosen in the way that suits its kind. */
export function SettingField({ setting, problem }: SettingFieldProps) {
  const { settings: said } = useReader().words;
  const [has, setHas] = useState<'value' | 'nothing'>(
    setting.mayBeNothing && setting.next === null ? 'nothing' : 'value',
  );
  if (!setting.mayBeNothing) return <ValueField setting={setting} problem={problem} />;
  return (
    <>
      <Choice
        legend={said.valueOrNothing}
        name={HAS}
        options={[
          { value: 'value', words: said.has.value },
          { value: 'nothing', words: said.has.nothing },
        ]}
        value={has}
        onChange={setHas}
      />
      {has === 'value' && <ValueField setting={setting} problem={problem} />}
    </>
  );
}

function ValueField({ setting, problem }: SettingFieldProps) {
  const reader = useReader();
  const { settings: said } = reader.words;
  const { next, takes, unit } = setting;
  const field = {
    label: said.newValue[setting.holds],
    name: VALUE,
    pointer: `/settings/${setting.name}`,
    problem,
    value: next === null || typeof next === 'object' ? '' : String(next),
  };
  switch (takes) {
    case 'yes-or-no':
      return (
        <OneOf
          setting={setting}
          options={[
            { value: 'true', words: said.yes },
            { value: 'false', words: said.no },
          ]}
        />
      );
    case 'choice':
      return (
        <OneOf
          setting={setting}
          options={setting.choices.map((value) => ({ value, words: value }))}
        />
      );
    case 'number':
    case 'whole-number': {
      const measure = measureIn(unit);
      const hint = takesText(setting, reader);
      if (measure !== null) return <MeasureField {...field} hint={hint} measure={measure} />;
      return (
        <TextField
          {...field}
          hint={hint}
          kind="number"
          {...(unit === null ? {} : { unit: unitText(unit, said) })}
        />
      );
    }
    case 'list':
      return <ListField setting={setting} problem={problem} />;
    default:
      return <TextField {...field} kind={unit === CLOCK_UNIT ? 'time' : 'text'} />;
  }
}

function OneOf({
  setting,
  options,
}: {
  setting: ListedSetting;
  options: readonly { value: string; words: string }[];
}) {
  const { settings: said } = useReader().words;
  const [value, setValue] = useState(String(setting.next));
  return (
    <Choice
      legend={said.newValue[setting.holds]}
      name={VALUE}
      options={options}
      value={value}
      onChange={setValue}
    />
  );
}
