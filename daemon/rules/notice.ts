import type { Gate } from '../contract/gate.ts';
import type { NoticeKind } from '../contract/notice.ts';
import type { Sentence, Told } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { inner, type SentenceTable } from '../wording/sentence.ts';
import type { NoticeFact } from './facts.ts';
import { noticeKinds } from './notice-kind.ts';

/** Something that wants attention as long as it is so. */
export interface Wanted {
  kind: NoticeKind;
  subject: string;
  text: string;
  /** The sentence of the text. */
  told?: Told;
  /** True between the limit that raises and the one that clears: an open one stays, none is raised. */
  onlyIfOpen?: boolean;
}

/** Something that wants attention, said by the sentence that has its kind for a code. */
const wants = <Kind extends NoticeKind>(
  kind: Kind,
  subject: string,
  values: SentenceTable[Kind],
  onlyIfOpen?: boolean,
): Wanted => {
  const { text, ...told } = sentence(kind, values);
  return { kind, subject, text, told, ...(onlyIfOpen === undefined ? {} : { onlyIfOpen }) };
};

/** What the site looks like to someone who decides what is worth a notice. */
export interface NoticeView {
  unplacedSensors: { id: string }[];
  /** Faults that stand, of sensors that hang somewhere. */
  faults?: { sensorId: string; reason: Sentence }[];
  places: {
    id: string;
    name: string;
    hasSensor: boolean;
    stale: boolean;
    at: number | null;
    /** Air inside, °C; null outdoors and where it is not known. */
    insideC?: number | null;
  }[];
  batches: {
    id: string;
    name: string;
    placeId: string;
    placeName: string;
    curing: boolean;
    readyFor: Gate | null;
    /** The same a little below the limit, so that a notice does not flutter around it. */
    nearlyReadyFor?: Gate | null;
    /** What to look for on a coat that has just been finished; null when nothing is due. */
    lookFor?: Sentence | null;
    /** True when lines stay open that are to be done on the day boards go up. */
    mountingOpen?: boolean;
  }[];
  /** Solvent in the rooms where a coat is fresh, by reckoning. */
  vapour?: { roomId: string; roomName: string; nowPpm: number; limitPpm: number }[];
}

/** What the operator set of notices. */
export interface NoticeLimits {
  /** Air inside that is too hot, °C. */
  overheatC: number;
}

/** A shed this hot is no longer only warmed by the sun, °C. Assumption; a setting. */
export const usualNoticeLimits: NoticeLimits = { overheatC: 45 };
/** How far below a limit what was raised is cleared again: share of a concentration, K. Assumptions. */
const vapourCleared = 0.8;
const overheatClearedK = 5;

/** All that is worth a notice now. */
export function wantedNotices(
  view: NoticeView,
  limits: NoticeLimits = usualNoticeLimits,
): Wanted[] {
  const wanted: Wanted[] = [];
  for (const { id } of view.unplacedSensors) {
    wanted.push(wants('sensor-unplaced', id, { sensor: id }));
  }
  const faults = view.faults ?? [];
  for (const subject of new Set(faults.map(({ sensorId }) => sensorId))) {
    const own = faults.filter((one) => one.sensorId === subject);
    const told = { faults: own.map(({ reason }) => inner(reason)) };
    wanted.push(wants('sensor-fault', subject, told));
  }
  const curingAt = new Set(view.batches.filter((b) => b.curing).map((b) => b.placeId));
  for (const place of view.places) {
    if (place.hasSensor && place.stale && place.at !== null && curingAt.has(place.id)) {
      wanted.push(wants('place-silent', place.id, { placeName: place.name }));
    }
  }
  for (const batch of view.batches) {
    const place = view.places.find((one) => one.id === batch.placeId);
    const at = { batchName: batch.name, placeName: batch.placeName };
    if (batch.curing && place && place.at === null) {
      wanted.push(wants('batch-without-air', batch.id, at));
    }
    if (batch.lookFor) {
      wanted.push(wants('look-again', batch.id, { ...at, look: inner(batch.lookFor) }));
    }
    if (batch.mountingOpen) wanted.push(wants('mounting-open', batch.id, at));
    const gate = batch.readyFor ?? batch.nearlyReadyFor ?? null;
    if (gate !== null) {
      wanted.push(wants('gate-ready', batch.id, { ...at, gate }, batch.readyFor === null));
    }
  }
  return [...wanted, ...dangers(view, limits)];
}

/** What can hurt: it is told at any hour. */
function dangers(view: NoticeView, limits: NoticeLimits): Wanted[] {
  const wanted: Wanted[] = [];
  for (const { roomId, roomName, nowPpm, limitPpm } of view.vapour ?? []) {
    if (nowPpm < vapourCleared * limitPpm) continue;
    const told = { placeName: roomName, nowPpm, limitPpm };
    wanted.push(wants('vapour', roomId, told, nowPpm <= limitPpm));
  }
  for (const { id, name, insideC, stale } of view.places) {
    if (stale || insideC === undefined || insideC === null) continue;
    if (insideC < limits.overheatC - overheatClearedK) continue;
    const told = { placeName: name, tempC: insideC };
    wanted.push(wants('overheating', id, told, insideC < limits.overheatC));
  }
  return wanted;
}

/** What to raise and what to clear, so that the open notices are the wanted ones. */
export function noticeChanges(
  open: readonly NoticeFact[],
  wanted: readonly Wanted[],
): { raise: Wanted[]; clear: NoticeFact[] } {
  const same = (a: { kind: string; subject: string }, b: { kind: string; subject: string }) =>
    a.kind === b.kind && a.subject === b.subject;
  return {
    raise: wanted.filter(
      (one) => one.onlyIfOpen !== true && !open.some((notice) => same(notice, one)),
    ),
    clear: open.filter(
      (notice) => !noticeKinds[notice.kind].byHand && !wanted.some((one) => same(notice, one)),
    ),
  };
}

/** How often an unticked rag line is told again on its first day, h. Assumption; a setting. */
export const usualRagRepeatHours = 2;
/** Until so long after it was raised it is told again at the set interval, then once a day. Assumption. */
const urgentMs = 86_400_000;
/** A coat that is entered so much later says nothing of where its rags are now. Assumption. */
const enteredLateMs = 3 * 86_400_000;

/**
 * The notices about rags that are to be told again: nobody has ticked them on the lock-up list. That
 * somebody saw one is no answer.
 *
 * @param coatFinishedAt - when the newest coat of a batch was done; null where none is recorded
 * @param everyMs - how often on the first day
 */
export function ragRepeats(
  open: readonly NoticeFact[],
  coatFinishedAt: (batchId: string) => number | null,
  now: number,
  everyMs: number,
): NoticeFact[] {
  return open.filter((notice) => {
    if (notice.kind !== 'rags') return false;
    const finishedAt = coatFinishedAt(notice.subject);
    if (finishedAt === null || notice.raisedAt - finishedAt > enteredLateMs) return false;
    const interval = now - notice.raisedAt < urgentMs ? everyMs : Math.max(everyMs, urgentMs);
    return now - (notice.repeatedAt ?? notice.raisedAt) >= interval;
  });
}

/** The caution that follows every coat. Common practice, no source; local rules come first. */
export const ragsCaution = (): Sentence => sentence('rags', {});
