import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import type { TopicRuleForm } from '../../daemon/contract/topic-rule.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { type JsonPointer, parsedPointer, pointerFault } from './json-pointer.ts';
import { shown } from './refusal.ts';
import { devicePart, parsedTemplate, type SensorTemplate } from './sensor-template.ts';
import { parsedPattern, type TopicPattern } from './topic-pattern.ts';
import { unitFault, unitFits } from './unit.ts';

export type RuleFault = {
  /** RFC 6901 pointer into the rule. */
  readonly pointer: string;
  readonly detail: string;
  /** The detail as a sentence, to be said in other languages. */
  readonly detailSaid: Said;
};

/** A fault of a rule. @param pointer to the field, RFC 6901 */
export const ruleFault = (pointer: string, said: Said): RuleFault => ({
  ...{ pointer, detail: said.text, detailSaid: said },
});

export type CompiledValue = {
  readonly quantity: Quantity;
  readonly pointer: JsonPointer;
  readonly pointerText: string;
  /** Last segment of a SenML record's name. */
  readonly name: string;
  readonly unit: string | null;
  readonly scale: number;
  readonly sensor: SensorTemplate;
};

/** A rule that has been checked and is ready to be used. */
export type CompiledRule = {
  readonly form: TopicRuleForm;
  readonly pattern: TopicPattern;
  readonly sensor: SensorTemplate;
  readonly values: readonly CompiledValue[];
  readonly time: {
    readonly part: string | null;
    readonly pointer: JsonPointer;
    readonly format: NonNullable<TopicRuleForm['time']>['format'];
  } | null;
};

export type Compiled =
  | { readonly kind: 'rule'; readonly rule: CompiledRule }
  | { readonly kind: 'faults'; readonly faults: readonly RuleFault[] };

/** A scale beyond this is a slip. Assumption. */
const largestScale = 1e12;
const timePart = /^\{([A-Za-z][A-Za-z0-9_-]{0,31})\}$/;

/**
 * Checks a rule and prepares it.
 *
 * @param site a rule must not take what this site itself publishes
 * @returns the rule, or everything that is wrong with it, each with a pointer to its field
 */
export function compiledRule(form: TopicRuleForm, site: string): Compiled {
  const faults: RuleFault[] = [];
  const say = (pointer: string, ...found: readonly Said[]) => {
    for (const said of found) faults.push(ruleFault(pointer, said));
  };
  const readPattern = parsedPattern(form.pattern, site);
  const pattern = Array.isArray(readPattern) ? null : (readPattern as TopicPattern);
  if (Array.isArray(readPattern)) say('/pattern', ...readPattern);
  // With a faulty pattern its parts are not known; they are then taken from its text.
  const parts = [
    ...(pattern?.parts ??
      [...form.pattern.matchAll(/\{([^{}]+)\}/g)].map((match) => match[1] ?? '')),
    ...(form.payload === 'senml' ? [devicePart] : []),
  ];
  const template = (text: string, pointer: string): SensorTemplate => {
    const read = parsedTemplate(text, parts, form.payload === 'json');
    if (!isTemplate(read)) {
      say(pointer, ...read);
      return [];
    }
    return read;
  };
  const sensor = template(form.sensor, '/sensor');
  const values = form.values.map((value, index): CompiledValue => {
    const at = `/values/${index}`;
    const { quantity, unit, scale, name } = value;
    const pointer = parsedPointer(value.pointer);
    if (form.payload === 'json') {
      if (typeof pointer === 'string') {
        say(`${at}/pointer`, pointerFault(pointer, shown(value.pointer)));
      }
    } else if (value.pointer !== '') {
      say(`${at}/pointer`, sentence('rule-pointer-not-json', {}));
    }
    if (form.payload === 'senml' && (name === '' || /[/:.]/.test(name))) {
      say(`${at}/name`, sentence('rule-name-segment', {}));
    } else if (form.payload !== 'senml' && name !== '') {
      say(`${at}/name`, sentence('rule-name-not-senml', {}));
    }
    if (form.payload === 'senml' && unit !== null) {
      say(`${at}/unit`, sentence('rule-senml-unit', {}));
    } else if (unit !== null && !unitFits(quantity, unit)) {
      say(`${at}/unit`, unitFault(quantity, unit, null));
    }
    if (scale === 0 || !(Math.abs(scale) <= largestScale)) {
      say(
        `${at}/scale`,
        sentence('rule-scale', { scale: String(scale), mostScale: String(largestScale) }),
      );
    } else if (form.payload === 'senml' && scale !== 1) {
      say(`${at}/scale`, sentence('rule-senml-scale', {}));
    }
    return {
      quantity,
      pointer: typeof pointer === 'string' ? [] : pointer,
      pointerText: value.pointer,
      name,
      unit: unit === quantityFacts[quantity].unit ? null : unit,
      scale,
      sensor: value.sensor === null ? sensor : template(value.sensor, `${at}/sensor`),
    };
  });
  if (form.values.length === 0 && form.payload !== 'senml') {
    say('/values', sentence('rule-without-value', {}));
  }
  if (form.payload === 'text' && form.values.length > 1) {
    say('/values', sentence('rule-text-one-value', {}));
  }
  for (const [index, value] of form.values.entries()) {
    const same = form.values.findIndex(
      (other) =>
        other.quantity === value.quantity &&
        (other.sensor ?? form.sensor) === (value.sensor ?? form.sensor) &&
        (form.payload !== 'senml' || other.name === value.name),
    );
    if (same !== index) {
      say(
        `/values/${index}`,
        sentence('rule-same-quantity', { quantity: value.quantity, number: same + 1 }),
      );
    }
  }
  const time = compiledTime(form, parts, say);
  if (faults.length > 0 || pattern === null) return { kind: 'faults', faults };
  return { kind: 'rule', rule: { form, pattern, sensor, values, time } };
}

function compiledTime(
  { time, payload }: TopicRuleForm,
  parts: readonly string[],
  say: (pointer: string, said: Said) => void,
): CompiledRule['time'] {
  if (time === null) return null;
  const part = timePart.exec(time.from)?.[1] ?? null;
  if (payload === 'senml') {
    say('/time', sentence('rule-senml-time', {}));
    return null;
  }
  if (part !== null) {
    if (!parts.includes(part)) {
      say('/time/from', sentence('part-unknown', { word: `{${part}}` }));
    }
    return { part, pointer: [], format: time.format };
  }
  const pointer = parsedPointer(time.from);
  if (payload === 'text') {
    say('/time/from', sentence('rule-time-in-text', {}));
  } else if (time.from === '') {
    say('/time/from', sentence('rule-time-nowhere', {}));
  } else if (typeof pointer === 'string') {
    say('/time/from', pointerFault(pointer, shown(time.from)));
  }
  return { part: null, pointer: typeof pointer === 'string' ? [] : pointer, format: time.format };
}

function isTemplate(read: SensorTemplate | Said[]): read is SensorTemplate {
  return read[0] !== undefined && 'kind' in read[0];
}
