interface ChoiceProps<T extends string> {
  legend: string;
  name: string;
  options: readonly { readonly value: T; readonly words: string }[];
  value: T;
  onChange: (value: T) => void;
}

/** One of a few, as buttons that a gloved thumb hits. */
export function Choice<T extends string>(props: ChoiceProps<T>) {
  const { legend, name, options, value, onChange } = props;
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="choice-row">
        {options.map((option) => (
          <label key={option.value} class="choice-option">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span>{option.words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
