/** Over which time the air is shown. */
export interface AirSpan {
  readonly kind: SpanKind;
  /** ISO 8601; empty but for a time of one’s own. */
  readonly from: string;
  readonly to: string;
  /** True where no new reading can add anything. */
  readonly isOver: boolean;
  /**
   * @param now - the daemon’s time, UTC epoch ms
   * @returns ISO 8601; no end up to now
   */
  timesAt(now: number): { from: string; to: string | null };
}

export const spanKinds = ['day', 'week', 'season', 'own'] as const;
export type SpanKind = (typeof spanKinds)[number];

const DAY_MS = 86_400_000;
/** Half a year: from the first mild days to the frost. */
const lengths: Readonly<Record<Exclude<SpanKind, 'own'>, number>> = {
  day: DAY_MS,
  week: 7 * DAY_MS,
  season: 183 * DAY_MS,
};

/** A time up to now. */
export function lastOf(kind: Exclude<SpanKind, 'own'>): AirSpan {
  return {
    ...{ kind, from: '', to: '', isOver: false },
    timesAt: (now) => ({ from: new Date(now - lengths[kind]).toISOString(), to: null }),
  };
}

/** A time of one’s own; a reversed one is turned round. */
export function ownSpan(one: string, other: string): AirSpan {
  const [from, to] = one <= other ? [one, other] : [other, one];
  return { kind: 'own', from, to, isOver: true, timesAt: () => ({ from, to }) };
}

/** The time that an address names; a week when it names none. */
export function spanOf(given: URLSearchParams): AirSpan {
  const [from, to] = [given.get('from'), given.get('to')];
  if (isMoment(from) && isMoment(to)) return ownSpan(from, to);
  const kind = given.get('span');
  return kind === 'day' || kind === 'season' ? lastOf(kind) : lastOf('week');
}

/** What an address says of a time. */
export function spanQuery({ kind, from, to }: AirSpan): Record<string, string> {
  return kind === 'own' ? { from, to } : { span: kind };
}

/** Whether a text is a moment that the daemon takes: the year has four digits. */
export const isMoment = (text: string | null): text is string =>
  text !== null && /^\d{4}-/.test(text) && !Number.isNaN(Date.parse(text));
