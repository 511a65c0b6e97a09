import { z } from 'zod';
import { type Said, Sentence } from './sentence.ts';

/**
 * Every error this program answers with, and its status; title and what to do about it are sentences.
 * A retired code moves to `retiredCodes` and is never used again.
 */
export const problems = {
  BC_REQUEST_INVALID: { status: 400 },
  BC_REQUEST_UNREADABLE: { status: 400 },
  BC_REQUEST_TOO_LARGE: { status: 413 },
  BC_ROUTE_UNKNOWN: { status: 404 },
  BC_THING_UNKNOWN: { status: 404 },
  BC_REFERENCE_UNKNOWN: { status: 422 },
  BC_STATE_CONFLICT: { status: 409 },
  BC_MERGE_UNLIKE: { status: 409 },
  BC_SPLIT_TOO_MANY: { status: 409 },
  BC_ID_TAKEN: { status: 409 },
  BC_WRITE_NOT_ALLOWED: { status: 403 },
  BC_LOGIN_NEEDED: { status: 401 },
  BC_ROLE_TOO_SMALL: { status: 403 },
  BC_PIN_WRONG: { status: 403 },
  BC_TRIES_EXHAUSTED: { status: 429 },
  BC_REQUEST_FOREIGN: { status: 403 },
  BC_HOST_UNKNOWN: { status: 403 },
  BC_SENSORS_WOULD_FALL_SILENT: { status: 409 },
  BC_TOO_MANY_REQUESTS: { status: 429 },
  BC_TOO_MANY_STREAMS: { status: 429 },
  BC_SETTING_FIXED: { status: 409 },
  BC_STORE_FULL: { status: 507 },
  BC_INTERNAL: { status: 500 },
} as const satisfies Record<string, { status: number }>;

export type ProblemCode = keyof typeof problems;

export const retiredCodes: readonly string[] = [];

/** What is wrong with one field. */
export const FieldFault = z.object({
  pointer: z.string(),
  detail: z.string(),
  detailSaid: Sentence.optional(),
});
export type FieldFault = z.infer<typeof FieldFault>;

/** RFC 9457 problem details with our members `code`, `doThis` and per-field `pointer`. */
export const Problem = z.object({
  type: z.string(),
  title: z.string(),
  titleSaid: Sentence.optional(),
  status: z.int(),
  detail: z.string(),
  detailSaid: Sentence.optional(),
  code: z.string(),
  doThis: z.string(),
  doThisSaid: Sentence.optional(),
  pointer: z.string().optional().describe('RFC 6901 pointer to the first faulty field'),
  errors: z.array(FieldFault).optional(),
});
export type Problem = z.infer<typeof Problem>;

/** An error that carries its code, so that whoever answers can say what to do about it. */
export class BoardcureError extends Error {
  readonly code: ProblemCode;
  readonly pointer: string | null;
  /** The sentence of the detail; null where the text is all there is. */
  readonly said: Said | null;
  /** Every fault, where there are several; the first is the one that `pointer` names. */
  readonly faults: readonly FieldFault[];

  /**
   * @param code - entry of the table of problems
   * @param detail - what was wrong and where, as a sentence
   * @param options - pointer to the faulty field or all faults, and what caused it
   */
  constructor(
    code: ProblemCode,
    detail: string | Said,
    options: {
      pointer?: string;
      faults?: readonly FieldFault[];
      cause?: unknown;
    } = {},
  ) {
    const said = typeof detail === 'string' ? null : detail;
    const text = typeof detail === 'string' ? detail : detail.text;
    super(text, options.cause === undefined ? undefined : { cause: options.cause });
    this.name = 'BoardcureError';
    this.code = code;
    this.said = said;
    this.pointer = options.pointer ?? options.faults?.[0]?.pointer ?? null;
    const detailSaid = said === null ? {} : { detailSaid: said };
    this.faults =
      options.faults ??
      (this.pointer === null ? [] : [{ pointer: this.pointer, detail: text, ...detailSaid }]);
  }
}
