import type { z } from 'zod';
import type { NeededRole } from './role.ts';

export type Method = 'GET' | 'POST' | 'PATCH' | 'DELETE';

/** One route as data: what it takes and what it answers. Server and dashboard both read this. */
export interface Route {
  readonly method: Method;
  readonly path: `/${string}`;
  readonly summary: string;
  /** Left out: `look` for a GET, `operate` for anything that changes something. */
  readonly role?: NeededRole;
  readonly params?: z.ZodType;
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
  readonly status: 200 | 201;
  readonly reply: z.ZodType;
}
