import type {
  FastifyError,
  FastifyReply,
  FastifyRequest,
  FastifySchemaValidationError,
} from 'fastify';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import { BoardcureError, type Problem, type ProblemCode, problems } from '../contract/problem.ts';

interface Fault {
  pointer: string;
  detail: string;
}

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
function problem(code: ProblemCode, detail: string, faults: Fault[] = []): Problem {
  const { status, title, doThis } = problems[code];
  const [first] = faults;
  return {
    type: `urn:boardcure:problem:${code.toLowerCase().replaceAll('_', '-')}`,
    title,
    status,
    detail,
    code,
    doThis,
    ...(first ? { pointer: first.pointer } : {}),
    ...(faults.length > 0 ? { errors: faults } : {}),
  };
}

export function sendProblem(
  reply: FastifyReply,
  code: ProblemCode,
  detail: string,
  faults: Fault[] = [],
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
      const faults = error.validation.flatMap(fieldFaults);
      const listed = faults
        .map(({ pointer, detail }) => (pointer === '' ? detail : `${pointer}: ${detail}`))
        .join('; ');
      return sendProblem(reply, 'BC_REQUEST_INVALID', `In the ${where}: ${listed}.`, faults);
    }
    if (error instanceof BoardcureError) {
      return sendProblem(reply, error.code, error.message, [...error.faults]);
    }
    const own = 'code' in error ? ownCodes[error.code] : undefined;
    if (own) return sendProblem(reply, own, error.message);
    if ('statusCode' in error && error.statusCode && error.statusCode < 500) {
      return sendProblem(reply, 'BC_REQUEST_UNREADABLE', error.message);
    }
    log.error({ url: request.url, error: error.stack ?? error.message }, 'a request failed');
    return sendProblem(reply, 'BC_INTERNAL', 'The daemon could not answer this request.');
  };
}

/**
 * The faults of one finding, each pointing at its field as RFC 6901 writes it; the whole is ''.
 * A field that is not known is pointed at itself, not at what it lies in.
 */
function fieldFaults(finding: FastifySchemaValidationError): Fault[] {
  const { instancePath, message = 'does not fit', params } = finding;
  const within = instancePath === '/' ? '' : instancePath;
  if (finding.keyword !== 'unrecognized_keys' || !Array.isArray(params.keys)) {
    return [{ pointer: within, detail: message }];
  }
  return params.keys.map((key) => ({
    pointer: `${within}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`,
    detail: 'there is no such field',
  }));
}
