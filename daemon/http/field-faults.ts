import type { FastifySchemaValidationError } from 'fastify';
import type { FieldFault } from '../contract/problem.ts';
import type { Told } from '../contract/sentence.ts';
import type { Inner } from '../wording/phrase.ts';
import { inner, told } from '../wording/sentence.ts';

/**
 * The faults of one finding, each pointing at its field as RFC 6901 writes it; the whole is ''.
 * A field that is not known is pointed at itself, not at what it lies in. The detail is that of the
 * check; beside it stands the sentence that says the same to somebody at a form.
 */
export function fieldFaults(finding: FastifySchemaValidationError): FieldFault[] {
  const { instancePath, message = 'does not fit', params } = finding;
  const within = instancePath === '/' ? '' : instancePath;
  if (finding.keyword !== 'unrecognized_keys' || !Array.isArray(params.keys)) {
    const detailSaid = { ...fieldSentence(finding.keyword, message, params), text: message };
    return [{ pointer: within, detail: message, detailSaid }];
  }
  const detail = 'there is no such field';
  const detailSaid = { ...told('field-fault/unknown-field', {}), text: detail };
  return params.keys.map((key) => ({
    pointer: `${within}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`,
    detail,
    detailSaid,
  }));
}

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
const own = ['no-day', 'no-part', 'left-twice', 'place-or-batch', 'without-batch'] as const;

/** @param keyword - what was found wrong, as zod names it; @param params - its figures */
function fieldSentence(keyword: string, message: string, params: Record<string, unknown>): Told {
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
      const { fault } = (params.params ?? {}) as { fault?: unknown };
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
