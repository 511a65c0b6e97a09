import type { FastifySchemaValidationError } from 'fastify';
import type { FieldFault } from '../contract/problem.ts';
import { fieldSentence } from '../wording/field-sentence.ts';
import { told } from '../wording/sentence.ts';

/**
 * The faults of what was found, each pointing at its field as RFC 6901 writes it; the whole is ''.
 * A field that is not known is pointed at itself, not at what it lies in. The detail is that of the
 * check; beside it stands the sentence that says the same to somebody at a form.
 */
export function fieldFaults(findings: readonly FastifySchemaValidationError[]): FieldFault[] {
  return findings.filter((one) => !isEcho(one, findings)).flatMap(faultsOf);
}

const within = ({ instancePath }: FastifySchemaValidationError) =>
  instancePath === '/' ? '' : instancePath;

/** A whole number far off is found too far for a computer, too: to a person its real limit says more. */
function isEcho(
  finding: FastifySchemaValidationError,
  findings: readonly FastifySchemaValidationError[],
): boolean {
  const { minimum, maximum } = finding.params;
  if (minimum !== Number.MIN_SAFE_INTEGER && maximum !== Number.MAX_SAFE_INTEGER) return false;
  return findings.some((other) => other !== finding && other.instancePath === finding.instancePath);
}

function faultsOf(finding: FastifySchemaValidationError): FieldFault[] {
  const { message = 'does not fit', params } = finding;
  if (finding.keyword !== 'unrecognized_keys' || !Array.isArray(params.keys)) {
    const detailSaid = { ...fieldSentence(finding.keyword, message, params), text: message };
    return [{ pointer: within(finding), detail: message, detailSaid }];
  }
  const detail = 'there is no such field';
  const detailSaid = { ...told('field-fault/unknown-field', {}), text: detail };
  return params.keys.map((key) => ({
    pointer: `${within(finding)}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`,
    detail,
    detailSaid,
  }));
}
