import { recordsAddress } from '../router.ts';

/** What is asked of the list; it stands in the address, so that it can be kept and gone back to. */
export interface Asked {
  readonly q: string;
  readonly kind: string;
  readonly batch: string;
  /** Days as `yyyy-mm-dd`, of this device’s calendar; empty for none. */
  readonly from: string;
  readonly to: string;
  readonly closed: string;
  readonly sort: string;
  readonly order: string;
  /** From 1. */
  readonly page: number;
}

export const PAGE_SIZE = 50;

const closings = ['with', 'without', 'only'] as const;
const orders = ['up', 'down'] as const;
const sorts = ['at', 'batch', 'kind', 'place'] as const;
export type Sort = (typeof sorts)[number];

/** What an address asks for; what does not fit is left out. */
export function askedOf(given: URLSearchParams): Asked {
  const text = (name: string) => given.get(name) ?? '';
  const one = <T extends string>(name: string, known: readonly T[]) =>
    known.find((value) => value === given.get(name)) ?? '';
  const day = (name: string) => (/^\d{4}-\d{2}-\d{2}$/.test(text(name)) ? text(name) : '');
  return {
    ...{ q: text('q'), kind: text('kind'), batch: text('batch') },
    ...{ from: day('from'), to: day('to') },
    ...{ closed: one('closed', closings), sort: one('sort', sorts), order: one('order', orders) },
    page: Math.max(1, Math.floor(Number(text('page')) || 1)),
  };
}

/** The address of the same list with something changed; the first page unless another is asked for. */
export function addressWith(asked: Asked, changes: Partial<Asked>): string {
  const { page, ...rest } = { ...asked, page: 1, ...changes };
  return recordsAddress({ ...rest, page: page > 1 ? String(page) : '' });
}

/** The same as the daemon wants it, without the page. */
export function queryOf(asked: Asked): Record<string, string> {
  const { q, kind, batch, closed, sort, order, from, to } = asked;
  const said = {
    ...{ q, kind, batch, closed, sort, order },
    from: from === '' ? '' : startOf(from, 0),
    // Up to and with the day that was said.
    to: to === '' ? '' : startOf(to, 1),
  };
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== ''));
}

/** Midnight of this device’s day, ISO 8601 UTC. */
function startOf(day: string, daysLater: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(year, month - 1, date + daysLater).toISOString();
}
