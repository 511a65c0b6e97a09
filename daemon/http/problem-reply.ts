import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import {
  BoardcureError,
  type FieldFault,
  type Problem,
  type ProblemCode,
  problems,
} from '../contract/problem.ts';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { inRequest } from '../wording/field-sentence.ts';
import { fieldFaults } from './field-faults.ts';

/** Errors of the server’s own parts, as our codes. */
const ownCodes: Record<string, ProblemCode> = {
  FST_ERR_BAD_URL: 'BC_ROUTE_UNKNOWN',
  FST_ERR_MAX_PARAM_LENGTH: 'BC_ROUTE_UNKNOWN',
  FST_ERR_CTP_BODY_TOO_LARGE: 'BC_REQUEST_TOO_LARGE',
  FST_ERR_CTP_INVALID_JSON_BODY: 'BC_REQUEST_UNREADABLE',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'BC_REQUEST_UNREADABLE',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'BC_REQUEST_UNREADABLE',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'BC_REQUEST_UNREADABLE',
};

/** An RFC 9457 body. */
function problem(
  code: ProblemCode,
  detail: string | Said,
  faults: readonly FieldFault[] = [],
): Problem {
  const titleSaid = sentence(`problem-title/${code}`, {});
  const doThisSaid = sentence(`problem-to-do/${code}`, {});
  const [first] = faults;
  return {
    type: `urn:boardcure:problem:${code.toLowerCase().replaceAll('_', '-')}`,
    ...{ title: titleSaid.text, titleSaid },
    status: problems[code].status,
    ...(typeof detail === 'string' ? { detail } : { detail: detail.text, detailSaid: detail }),
    code,
    ...{ doThis: doThisSaid.text, doThisSaid },
    ...(first ? { pointer: first.pointer } : {}),
    ...(faults.length > 0 ? { errors: [...faults] } : {}),
  };
}

export function sendProblem(
  reply: FastifyReply,
  code: ProblemCode,
  detail: string | Said,
  faults: readonly FieldFault[] = [],
): FastifyReply {
  const body = problem(code, detail, faults);
  return reply
    .code(body.status)
    .type('application/problem+json')
    .serializer((value: unknown) => JSON.stringify(value))
    .send(body);
}

/** Answers any error of a request; what is unexpected is logged and not shown. */
export function problemReply(log: { error(facts: object, text: string): void }) {
  return (error: FastifyError | Error, request: FastifyRequest, reply: FastifyReply) => {
    if (hasZodFastifySchemaValidationErrors(error)) {
      const where = error.validationContext === 'querystring' ? 'query' : error.validationContext;
      const faults = fieldFaults(error.validation);
      const listed = faults
        .map(({ pointer, detail }) => (pointer === '' ? detail : `${pointer}: ${detail}`))
        .join('; ');
      const text = `In the ${where}: ${listed}.`;
      return sendProblem(
        reply,
        'BC_REQUEST_INVALID',
        { ...inRequest(where, faults), text },
        faults,
      );
    }
    if (error instanceof BoardcureError) {
      return sendProblem(reply, error.code, error.said ?? error.message, error.faults);
    }
    const own = 'code' in error ? ownCodes[error.code] : undefined;
    if (own) return sendProblem(reply, own, error.message);
    if ('statusCode' in error && error.statusCode && error.statusCode < 500) {
      return sendProblem(reply, 'BC_REQUEST_UNREADABLE', error.message);
    }
    log.error({ url: request.url, error: error.stack ?? error.message }, 'a request failed');
    return sendProblem(reply, 'BC_INTERNAL', sentence('could-not-answer', {}));
  };
}
