import type { HandReading, Move, Remark } from '../contract/batch.ts';
import { toMoment } from '../contract/moment.ts';
import type { Notice } from '../contract/notice.ts';
import type { Place } from '../contract/place.ts';
import type { Plan } from '../contract/plan.ts';
import type {
  HandReadingFact,
  MoveFact,
  NoticeFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
} from './facts.ts';

/* Recorded facts as the outside sees them: the same, with ISO times. */

export const placeReply = (place: PlaceFact): Place => ({
  ...place,
  createdAt: toMoment(place.createdAt),
});

export const planReply = (plan: PlanFact): Plan => ({
  ...plan,
  createdAt: toMoment(plan.createdAt),
});

export const moveReply = ({ id, placeId, at }: MoveFact): Move => ({
  id,
  placeId,
  at: toMoment(at),
});

export const remarkReply = ({ id, at, kind, text }: RemarkFact): Remark => ({
  id,
  at: toMoment(at),
  kind,
  text,
});

export const handReadingReply = (reading: HandReadingFact): HandReading => ({
  ...reading,
  at: toMoment(reading.at),
});

export const noticeReply = (notice: NoticeFact): Notice => ({
  ...notice,
  raisedAt: toMoment(notice.raisedAt),
  seenAt: toMoment(notice.seenAt),
  clearedAt: toMoment(notice.clearedAt),
  repeatedAt: toMoment(notice.repeatedAt),
});
