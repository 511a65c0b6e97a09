import { z } from 'zod';

/**
 * Every error this program answers with: its status, its title and what to do about it.
 * A retired code moves to `retiredCodes` and is never used again.
 */
export const problems = {
  BC_REQUEST_INVALID: {
    status: 400,
    title: 'The request has a field that does not fit',
    doThis: 'Correct the fields listed under errors and send it again.',
  },
  BC_REQUEST_UNREADABLE: {
    status: 400,
    title: 'The request could not be read',
    doThis: 'Send JSON with the header content-type: application/json.',
  },
  BC_REQUEST_TOO_LARGE: {
    status: 413,
    title: 'The request is too large',
    doThis: 'Send at most 1 MB at once.',
  },
  BC_ROUTE_UNKNOWN: {
    status: 404,
    title: 'There is nothing at this address',
    doThis: 'See /api/v1/openapi.json for the addresses that exist.',
  },
  BC_THING_UNKNOWN: {
    status: 404,
    title: 'There is no such thing here',
    doThis: 'Check the id; list what exists with a GET on the collection.',
  },
  BC_REFERENCE_UNKNOWN: {
    status: 422,
    title: 'A field points at something that does not exist',
    doThis: 'Create it first, or use the id of an existing one.',
  },
  BC_STATE_CONFLICT: {
    status: 409,
    title: 'This does not fit what is already recorded',
    doThis: 'Look at what is recorded, then send a corrected request.',
  },
  BC_MERGE_UNLIKE: {
    status: 409,
    title: 'These boards cannot be put together',
    doThis: 'Keep them as two batches, or put together only boards of one timber, plan and coats.',
  },
  BC_SPLIT_TOO_MANY: {
    status: 409,
    title: 'There are not that many boards to split off',
    doThis: 'Give fewer boards; where all of them went, record a move instead.',
  },
  BC_ID_TAKEN: {
    status: 409,
    title: 'This id is already used for something else',
    doThis: 'Send it with a new id.',
  },
  BC_WRITE_NOT_ALLOWED: {
    status: 403,
    title: 'Changes are only accepted from the computer itself',
    doThis:
      'Open the page on the computer that runs the daemon, at http://localhost, or choose a PIN there, or here with the set-up code that the daemon printed at its start.',
  },
  BC_LOGIN_NEEDED: {
    status: 401,
    title: 'This needs a log-in',
    doThis: 'Log in with the PIN, then send it again.',
  },
  BC_ROLE_TOO_SMALL: {
    status: 403,
    title: 'This device may not do this',
    doThis: 'Log in with a PIN that may.',
  },
  BC_PIN_WRONG: {
    status: 403,
    title: 'The PIN or code is not right',
    doThis:
      'Try again; who has forgotten the PIN sets a new one on the computer itself with: boardcure pin.',
  },
  BC_TRIES_EXHAUSTED: {
    status: 429,
    title: 'Too many wrong PINs or codes came from this device',
    doThis:
      'Wait for the time it says, or use a device that is logged in, or set a new PIN on the computer itself with: boardcure pin.',
  },
  BC_REQUEST_FOREIGN: {
    status: 403,
    title: 'The request came from a page of another site',
    doThis:
      'Use the page of this daemon; a program sends the header x-boardcure-request with any value.',
  },
  BC_HOST_UNKNOWN: {
    status: 403,
    title: 'The daemon is not known under this name',
    doThis:
      'Use its IP address or the name of its computer, or list the name in the settings under http.names.',
  },
  BC_SENSORS_WOULD_FALL_SILENT: {
    status: 409,
    title: 'Closing the broker would silence something in use',
    doThis:
      'Create a name and a password for each and put them in, or send those that may fall silent under silence.',
  },
  BC_TOO_MANY_REQUESTS: {
    status: 429,
    title: 'Too many requests come from this device',
    doThis: 'Wait a minute, or raise http.maxRequestsPerMinute in the settings.',
  },
  BC_TOO_MANY_STREAMS: {
    status: 429,
    title: 'Too many pages listen already',
    doThis: 'Wait until another page is closed, or raise http.maxStreams in the settings.',
  },
  BC_STORE_FULL: {
    status: 507,
    title: 'The disk is full',
    doThis: 'Free some space on the disk; recording goes on by itself.',
  },
  BC_INTERNAL: {
    status: 500,
    title: 'Something went wrong inside the daemon',
    doThis: 'Try again; if it happens again, look at the daemon’s log.',
  },
} as const satisfies Record<string, { status: number; title: string; doThis: string }>;

export type ProblemCode = keyof typeof problems;

export const retiredCodes: readonly string[] = [];

/** RFC 9457 problem details with our members `code`, `doThis` and per-field `pointer`. */
export const Problem = z.object({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string(),
  code: z.string(),
  doThis: z.string(),
  pointer: z.string().optional().describe('RFC 6901 pointer to the first faulty field'),
  errors: z.array(z.object({ pointer: z.string(), detail: z.string() })).optional(),
});
export type Problem = z.infer<typeof Problem>;

/** An error that carries its code, so that whoever answers can say what to do about it. */
export class BoardcureError extends Error {
  readonly code: ProblemCode;
  readonly pointer: string | null;
  /** Every fault, where there are several; the first is the one that `pointer` names. */
  readonly faults: readonly { pointer: string; detail: string }[];

  /**
   * @param code - entry of the table of problems
   * @param detail - what was wrong and where, as a sentence
   * @param options - pointer to the faulty field or all faults, and what caused it
   */
  constructor(
    code: ProblemCode,
    detail: string,
    options: {
      pointer?: string;
      faults?: readonly { pointer: string; detail: string }[];
      cause?: unknown;
    } = {},
  ) {
    super(detail, options.cause === undefined ? undefined : { cause: options.cause });
    this.name = 'BoardcureError';
    this.code = code;
    this.pointer = options.pointer ?? options.faults?.[0]?.pointer ?? null;
    this.faults =
      options.faults ?? (this.pointer === null ? [] : [{ pointer: this.pointer, detail }]);
  }
}
