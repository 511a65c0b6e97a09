import type { FieldFault } from '../contract/problem.ts';
import type { Told } from '../contract/sentence.ts';
import type { Inner } from './phrase.ts';
import { inner, told } from './sentence.ts';

/** Where the faults of a request lie, as one sentence. */
export function inRequest(where: string | undefined, faults: readonly FieldFault[]): Told {
  const listed = faults.map(({ pointer, detail, detailSaid }) => {
    const fault = inner(detailSaid ?? { code: 'field-fault', text: detail });
    return told('field-at', { pointer, fault }) as Inner;
  });
  const part = parts.find((one) => one === where) ?? 'body';
  return told(`in-request/${part}`, { faults: listed });
}
const parts = ['body', 'query', 'params', 'headers'] as const;

/** Formats that have a sentence of their own. */
const formats: Readonly<Record<string, 'no-moment' | 'no-day' | 'no-id'>> = {
  datetime: 'no-moment',
  date: 'no-day',
  uuid: 'no-id',
};
/** What the contract itself checks: `params.fault` of its refinements. */
const own = [
  'no-day',
  'no-part',
  'left-twice',
  'place-or-batch',
  'without-batch',
  'no-time-zone',
] as const;

/**
 * What is wrong with a field, as a sentence.
 *
 * @param keyword - what was found wrong, as zod names it
 * @param message - zod’s own words
 * @param params - the figures of the finding
 */
export function fieldSentence(
  keyword: string,
  message: string,
  params: Record<string, unknown>,
): Told {
  switch (keyword) {
    case 'invalid_type':
      return message.endsWith('received undefined')
        ? told('field-fault/missing', {})
        : told('field-fault/wrong-kind', { expected: String(params.expected) });
    case 'invalid_value':
      return Array.isArray(params.values)
        ? told('field-fault/not-among', { options: params.values.map(String) })
        : told('field-fault/does-not-fit', {});
    case 'too_small':
      return tooSmall(params.origin, Number(params.minimum), params.inclusive !== false);
    case 'too_big':
      return tooBig(params.origin, Number(params.maximum), params.inclusive !== false);
    case 'invalid_format':
      return told(`field-fault/${formats[String(params.format)] ?? 'wrong-form'}`, {});
    case 'not_multiple_of':
      return told('field-fault/no-multiple', { divisor: Number(params.divisor) });
    case 'custom': {
      const { fault, names } = (params.params ?? {}) as { fault?: unknown; names?: unknown };
      if (fault === 'must-rise' && Array.isArray(names)) {
        return told('field-fault/must-rise', { names: names.map(String) });
      }
      const known = own.find((one) => one === fault);
      return told(known === undefined ? 'field-fault/does-not-fit' : `field-fault/${known}`, {});
    }
    default:
      return told('field-fault/does-not-fit', {});
  }
}

function tooSmall(origin: unknown, minimum: number, isInclusive: boolean): Told {
  if (origin === 'string') return told('field-fault/too-short', { minimum });
  if (origin === 'array') return told('field-fault/too-few', { minimum });
  return told(isInclusive ? 'field-fault/too-small' : 'field-fault/not-above', { minimum });
}

function tooBig(origin: unknown, maximum: number, isInclusive: boolean): Told {
  if (origin === 'string') return told('field-fault/too-long', { maximum });
  if (origin === 'array') return told('field-fault/too-many', { maximum });
  return told(isInclusive ? 'field-fault/too-big' : 'field-fault/not-below', { maximum });
}
