import type { Quantity } from '../../daemon/contract/quantity.ts';
import type {
  PayloadKind,
  RuleTimeFormat,
  RuleValue,
  TopicRuleDraft,
} from '../../daemon/contract/topic-rule.ts';
import { optionalNumberOf, textOf } from '../forms/typed.ts';

/** What a new rule begins with. */
export const blankRule: TopicRuleDraft = {
  pattern: '',
  sensor: '{sensor}',
  payload: 'json',
  values: [{ quantity: 'air-temperature', pointer: '/temperature' }],
};

/**
 * The rule that a form of the editor holds.
 *
 * @param rows - keys of the rows of values, in their order
 */
export function draftOf(form: FormData, rows: readonly number[]): TopicRuleDraft {
  const payload = textOf(form, 'payload') as PayloadKind;
  const from = textOf(form, 'time-from');
  return {
    pattern: textOf(form, 'pattern'),
    sensor: textOf(form, 'sensor'),
    payload,
    values: rows.map((row) => ruleValueOf(form, row, payload)),
    ...(from === '' || payload === 'senml'
      ? {}
      : { time: { from, format: textOf(form, 'time-format') as RuleTimeFormat } }),
  };
}

function ruleValueOf(form: FormData, row: number, payload: PayloadKind): RuleValue {
  const scale = optionalNumberOf(form, `scale-${row}`);
  const unit = textOf(form, `unit-${row}`);
  const place = textOf(form, `place-${row}`);
  const sensor = textOf(form, `sensor-${row}`);
  return {
    quantity: textOf(form, `quantity-${row}`) as Quantity,
    ...(payload === 'json' ? { pointer: place } : {}),
    ...(payload === 'senml' ? { name: place } : {}),
    ...(unit === '' ? {} : { unit }),
    ...(scale === null ? {} : { scale }),
    ...(sensor === '' ? {} : { sensor }),
  };
}

/** What was chosen for one number of a message; null where it is not used. */
export interface ChosenValue {
  quantity: Quantity;
  pointer: string;
  name: string;
  unit: string | null;
  scale: number;
}

/** The suggested rule with what was chosen in place of what was guessed. */
export function chosenRule(
  suggestion: TopicRuleDraft,
  chosen: readonly ChosenValue[],
): TopicRuleDraft {
  return {
    ...suggestion,
    values: chosen.map(({ quantity, pointer, name, unit, scale }) =>
      suggestion.payload === 'senml'
        ? { quantity, name }
        : {
            quantity,
            ...(pointer === '' ? {} : { pointer }),
            ...(unit === null ? {} : { unit }),
            ...(scale === 1 ? {} : { scale }),
          },
    ),
  };
}
