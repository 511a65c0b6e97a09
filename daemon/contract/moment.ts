import { z } from 'zod';

/** A moment as it crosses a border: ISO 8601 with its offset; inside, it is UTC epoch milliseconds. */
export const Moment = z.iso
  .datetime({ offset: true })
  .describe('ISO 8601 with an offset or Z, for example 2026-05-04T07:30:00Z');
export type Moment = z.infer<typeof Moment>;

/** A client may bring its own id, so that what was entered without a network arrives once. */
export const Id = z.uuid().toLowerCase().describe('UUID; version 7 when made here');
export type Id = z.infer<typeof Id>;

/** ISO 8601 UTC text of an epoch-millisecond moment; null stays null. */
export function toMoment(at: number): string;
export function toMoment(at: number | null): string | null;
export function toMoment(at: number | null): string | null {
  return at === null ? null : new Date(at).toISOString();
}
