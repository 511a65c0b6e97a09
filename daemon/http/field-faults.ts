import type { FastifySchemaValidationError } from 'fastify';
import type { FieldFault } from '../contract/problem.ts';
import { fieldSentence } from '../wording/field-sentence.ts';
import { told } from '../wording/sentence.ts';

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
