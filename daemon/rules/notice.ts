import type { NoticeKind } from '../contract/notice.ts';
import type { NoticeFact } from './facts.ts';

/** Something that wants attention as long as it is so. */
export interface Wanted {
  kind: NoticeKind;
  subject: string;
  text: string;
}

/** What the site looks like to someone who decides what is worth a notice. */
export interface NoticeView {
  unplacedSensors: { id: string }[];
  places: { id: string; name: string; hasSensor: boolean; stale: boolean; at: number | null }[];
  batches: {
    id: string;
    name: string;
    placeId: string;
    placeName: string;
    curing: boolean;
    readyFor: string | null;
  }[];
}

/** All that is worth a notice now. */
export function wantedNotices(view: NoticeView): Wanted[] {
  const wanted: Wanted[] = [];
  for (const { id } of view.unplacedSensors) {
    wanted.push({
      kind: 'sensor-unplaced',
      subject: id,
      text: `Sensor ${id} sends readings but has no place yet: say where it hangs.`,
    });
  }
  const curingAt = new Set(view.batches.filter((b) => b.curing).map((b) => b.placeId));
  for (const place of view.places) {
    if (place.hasSensor && place.stale && place.at !== null && curingAt.has(place.id)) {
      wanted.push({
        kind: 'place-silent',
        subject: place.id,
        text: `${place.name} has been silent for hours: look at its sensor. Cure is not counted meanwhile.`,
      });
    }
  }
  for (const batch of view.batches) {
    const place = view.places.find((one) => one.id === batch.placeId);
    if (batch.curing && place && place.at === null) {
      wanted.push({
        kind: 'batch-without-air',
        subject: batch.id,
        text: `${batch.name} cures at ${batch.placeName}, where no sensor reads the air: nothing can be counted.`,
      });
    }
    if (batch.readyFor !== null) {
      wanted.push({
        kind: 'gate-ready',
        subject: batch.id,
        text: `${batch.name} at ${batch.placeName} is cured enough for ${batch.readyFor}.`,
      });
    }
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
    raise: wanted.filter((one) => !open.some((notice) => same(notice, one))),
    // Rags are reminded of until someone has seen it; nothing that is measured clears that.
    clear: open.filter((notice) =>
      notice.kind === 'rags' ? notice.seenAt !== null : !wanted.some((one) => same(notice, one)),
    ),
  };
}

/** The caution that follows every coat. Common practice, no source; local rules come first. */
export const ragsText =
  'Oily rags heat up by themselves and can catch fire: lay them out flat in a single layer outdoors, ' +
  'or under water in a lidded metal can. Never in a heap, a bag or indoors. Local rules come first.';
