import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import { shownNumber } from '../format/typed-number.ts';
import { type Told, useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { faultAt } from './fault.ts';

export interface FieldFrame {
  label: string;
  /** RFC 6901 pointer of what the daemon gets. */
  pointer: string;
  problem: Problem | null;
  hint?: string;
  /** What the page itself found wrong, before anything was sent. */
  fault?: string | null;
}

type TextFieldProps = FieldFrame & {
  name: string;
  value?: string;
  unit?: string;
  /** A number is typed as text, so that a comma may be its decimal point. */
  kind?: 'text' | 'number' | 'datetime-local' | 'time';
};

/** A labelled line of text or a number, with the fault the daemon found in it. */
export function TextField(props: TextFieldProps) {
  const { label, pointer, problem, hint, fault, name, value, unit, kind = 'text' } = props;
  const { locale, words } = useReader();
  const shown = kind === 'number' && value !== undefined ? shownNumber(value, locale) : value;
  const initial = shown === undefined ? {} : { defaultValue: shown };
  // To the daemon it is how a moment is written; here that is the business of the browser.
  const isNoMoment = kind === 'datetime-local' && isOfForm(faultAt(problem, pointer));
  const ownFault = fault ?? (isNoMoment ? words.forms.when.incomplete : null);
  return (
    <Framed {...{ label, pointer, problem }} {...given('hint', hint)} fault={ownFault}>
      {(attributes) => (
        <span class="field-line">
          {kind === 'datetime-local' || kind === 'time' ? (
            <input {...attributes} {...initial} class="input" name={name} type={kind} />
          ) : (
            <input
              {...attributes}
              {...initial}
              class={kind === 'number' ? 'input input-number' : 'input'}
              name={name}
              type="text"
              autocomplete="off"
              inputMode={kind === 'number' ? 'decimal' : 'text'}
            />
          )}
          {unit !== undefined && <span class="field-unit">{unit}</span>}
        </span>
      )}
    </Framed>
  );
}

function isOfForm(told: Told | null): boolean {
  return told?.values?.variant === 'no-moment';
}

type SelectFieldProps = FieldFrame & {
  name: string;
  value?: string;
  onChange?: (value: string) => void;
  children: ComponentChildren;
};

/** A labelled choice, with the fault the daemon found in it. */
export function SelectField(props: SelectFieldProps) {
  const { label, pointer, problem, hint, name, value, onChange, children } = props;
  return (
    <Framed label={label} pointer={pointer} problem={problem} {...given('hint', hint)}>
      {(attributes) => (
        <select
          {...attributes}
          class="input"
          name={name}
          {...(value === undefined ? {} : { value })}
          onChange={(event) => onChange?.(event.currentTarget.value)}
        >
          {children}
        </select>
      )}
    </Framed>
  );
}

interface FramedAttributes {
  id: string;
  'aria-describedby'?: string;
  'aria-invalid'?: 'true';
}

/** A label, what it stands for, a hint and the fault that was found. */
export function Framed({
  label,
  pointer,
  problem,
  hint,
  fault: ownFault = null,
  children,
}: FieldFrame & { children: (attributes: FramedAttributes) => ComponentChildren }) {
  const id = useId();
  const told = faultAt(problem, pointer);
  const fault = ownFault ?? (told === null ? null : <Said sentence={told} />);
  const notes = [hint === undefined ? null : `${id}-hint`, fault === null ? null : `${id}-fault`]
    .filter((note) => note !== null)
    .join(' ');
  const attributes: FramedAttributes = {
    id,
    ...(notes === '' ? {} : { 'aria-describedby': notes }),
    ...(fault === null ? {} : { 'aria-invalid': 'true' }),
  };
  return (
    <div class={fault === null ? 'field' : 'field field-faulty'}>
      <label for={id}>{label}</label>
      {children(attributes)}
      {hint !== undefined && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {fault !== null && (
        <p class="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}

function given(key: 'hint', value: string | undefined): { hint?: string } {
  return value === undefined ? {} : { [key]: value };
}
