import type { HandReading, Move, Remark } from '../contract/batch.ts';
import { toMoment } from '../contract/moment.ts';
import type { Notice } from '../contract/notice.ts';
import type { Place } from '../contract/place.ts';
import type { Plan } from '../contract/plan.ts';
import type { Timber } from '../contract/timber.ts';
import type { Tin } from '../contract/tin.ts';
import type {
  HandReadingFact,
  MoveFact,
  NoticeFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
} from './facts.ts';
import { mountingOf } from './mounting.ts';
import { remarkCures } from './remark-cure.ts';
import {
  type MountingTickFact,
  nothingSaidOfTimber,
  type TimberFact,
  type TinFact,
} from './trade-facts.ts';

/* Recorded facts as the outside sees them: the same, with ISO times. */

export const placeReply = (place: PlaceFact): Place => ({
  ...place,
  capacityM: place.capacityM ?? null,
  capacityBoards: place.capacityBoards ?? null,
  createdAt: toMoment(place.createdAt),
});

export const planReply = (
  plan: PlanFact,
  given: { isNewest: boolean; learned: Plan['learned'] },
): Plan => ({
  ...plan,
  createdAt: toMoment(plan.createdAt),
  familyId: plan.familyId ?? plan.id,
  version: plan.version ?? 1,
  use: plan.use ?? null,
  ...given,
});

/** @param mounting - lines ticked where it led to a wall; null elsewhere */
export const moveReply = (
  { id, placeId, at }: MoveFact,
  mounting: readonly MountingTickFact[] | null,
): Move => ({
  id,
  placeId,
  at: toMoment(at),
  mounting: mounting === null ? null : mountingOf(mounting),
});

export const remarkReply = (remark: RemarkFact): Remark => {
  const { id, at, kind, text, automatic, told = null } = remark;
  const cureSaid = remarkCures(kind);
  return {
    id,
    at: toMoment(at),
    kind,
    text,
    textSaid: told === null || text === null ? null : { ...told, text },
    automatic: automatic ?? false,
    cure: cureSaid.map((one) => one.text),
    cureSaid,
  };
};

export const handReadingReply = (reading: HandReadingFact): HandReading => ({
  ...reading,
  at: toMoment(reading.at),
});

/**
 * @param usedL - litres that coats took out of it
 * @param doubts - why a coat out of it may cure slowly
 */
export const tinReply = (tin: TinFact, usedL: number, doubts: Tin['doubts']): Tin => ({
  ...tin,
  openedAt: toMoment(tin.openedAt),
  emptiedAt: toMoment(tin.emptiedAt),
  createdAt: toMoment(tin.createdAt),
  usedL,
  doubts,
});

export const timberReply = (timber: TimberFact | null | undefined): Timber => {
  const known = timber ?? nothingSaidOfTimber;
  return { ...known, deliveredAt: toMoment(known.deliveredAt) };
};

export const noticeReply = ({ told = null, ...notice }: NoticeFact): Notice => ({
  ...notice,
  ...(told ?? { code: notice.kind }),
  raisedAt: toMoment(notice.raisedAt),
  seenAt: toMoment(notice.seenAt),
  clearedAt: toMoment(notice.clearedAt),
  repeatedAt: toMoment(notice.repeatedAt),
});
