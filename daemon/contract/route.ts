import type { z } from 'zod';

export type Method = 'GET' | 'POST' | 'PATCH' | 'DELETE';

/** One route as data: what it takes and what it answers. Server and dashboard both read this. */
export interface Route {
  readonly method: Method;
  readonly path: `/${string}`;
  readonly summary: string;
  readonly params?: z.ZodType;
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
  readonly status: 200 | 201;
  readonly reply: z.ZodType;
}
