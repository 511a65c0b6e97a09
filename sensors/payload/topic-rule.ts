import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import type { TopicRuleForm } from '../../daemon/contract/topic-rule.ts';
import { type JsonPointer, parsedPointer } from './json-pointer.ts';
import { shown } from './refusal.ts';
import { devicePart, parsedTemplate, type SensorTemplate } from './sensor-template.ts';
import { parsedPattern, type TopicPattern } from './topic-pattern.ts';
import { unitFault, unitFits } from './unit.ts';

export type RuleFault = {
  /** RFC 6901 pointer into the rule. */
  readonly pointer: string;
  readonly detail: string;
};

export type CompiledValue = {
  readonly quantity: Quantity;
  readonly pointer: JsonPointer;
  readonly pointerText: string;
  /** For a sentence, for example `at /temp`. */
  readonly where: string;
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
  const say = (pointer: string, ...details: readonly string[]) => {
    for (const detail of details) faults.push({ pointer, detail });
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
      if (typeof pointer === 'string')
        say(`${at}/pointer`, `The pointer ${shown(value.pointer)} ${pointer}.`);
    } else if (value.pointer !== '') {
      say(`${at}/pointer`, 'A pointer finds something in JSON only; leave it empty.');
    }
    if (form.payload === 'senml' && (name === '' || /[/:.]/.test(name))) {
      say(
        `${at}/name`,
        'Give the last segment of the record’s name, which is what comes after the last / or : or . in it.',
      );
    } else if (form.payload !== 'senml' && name !== '') {
      say(`${at}/name`, 'A name finds a record of SenML only; leave it empty.');
    }
    if (form.payload === 'senml' && unit !== null) {
      say(`${at}/unit`, 'A SenML record tells its own unit; leave the unit out.');
    } else if (unit !== null && !unitFits(quantity, unit)) {
      say(`${at}/unit`, `The unit ${shown(unit)} ${unitFault(quantity, unit)}`);
    }
    if (scale === 0 || !(Math.abs(scale) <= largestScale)) {
      say(`${at}/scale`, `The scale is ${scale}; it cannot be 0 nor beyond ${largestScale}.`);
    } else if (form.payload === 'senml' && scale !== 1) {
      say(`${at}/scale`, 'A SenML record tells its own unit; leave the scale at 1.');
    }
    return {
      quantity,
      pointer: typeof pointer === 'string' ? [] : pointer,
      pointerText: value.pointer,
      where: form.payload === 'json' ? `at ${value.pointer || 'the top'}` : 'in the payload',
      name,
      unit: unit === quantityFacts[quantity].unit ? null : unit,
      scale,
      sensor: value.sensor === null ? sensor : template(value.sensor, `${at}/sensor`),
    };
  });
  if (form.values.length === 0 && form.payload !== 'senml') {
    say('/values', 'The rule makes no reading; say which quantity it finds.');
  }
  if (form.payload === 'text' && form.values.length > 1) {
    say('/values', 'Text holds one number, so the rule can make one reading.');
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
        `It makes ${quantityFacts[value.quantity].words} of the same sensor as number ${same + 1}; give one of them another sensor.`,
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
  say: (pointer: string, detail: string) => void,
): CompiledRule['time'] {
  if (time === null) return null;
  const part = timePart.exec(time.from)?.[1] ?? null;
  if (payload === 'senml') {
    say('/time', 'A SenML record tells its own time; leave the time out.');
    return null;
  }
  if (part !== null) {
    if (!parts.includes(part)) say('/time/from', `There is no part {${part}} in the pattern.`);
    return { part, pointer: [], format: time.format };
  }
  const pointer = parsedPointer(time.from);
  if (payload === 'text') {
    say('/time/from', 'Text holds a number alone; the time can only be a part of the topic.');
  } else if (time.from === '') {
    say('/time/from', 'Say where the time stands, for example /time, or leave the time out.');
  } else if (typeof pointer === 'string') {
    say('/time/from', `The pointer ${shown(time.from)} ${pointer}.`);
  }
  return { part: null, pointer: typeof pointer === 'string' ? [] : pointer, format: time.format };
}

function isTemplate(read: SensorTemplate | string[]): read is SensorTemplate {
  return typeof read[0] === 'object';
}
