import type { Overview } from '../../daemon/contract/overview.ts';
import { agoOf } from '../format/painters-time.ts';
import type { Reader, Told } from '../reader.ts';
import type { Sign } from '../words/sign.ts';

type OverviewPlace = Overview['places'][number];
type OverviewBatch = OverviewPlace['batches'][number];

/** One board of the wall: a batch where it lies, or an empty rack. */
export interface WallRow {
  readonly key: string;
  readonly place: OverviewPlace;
  readonly batch: OverviewBatch | null;
  readonly sign: Sign;
}

/** The boards of the wall, in the daemon’s own order, so that each stays where it was. */
export function wallRows(overview: Overview): WallRow[] {
  return overview.places.flatMap((place): WallRow[] => {
    if (place.batches.length > 0) {
      return place.batches.map((batch) => ({
        key: batch.id,
        place,
        batch,
        sign: signOf(batch, place),
      }));
    }
    return place.kind === 'rack' ? [{ key: place.id, place, batch: null, sign: 'empty' }] : [];
  });
}

/**
 * The word that stands on a batch’s board.
 *
 * @param place - where it lies; without any air there, nothing can be said
 */
export function signOf(batch: OverviewBatch, place: Pick<OverviewPlace, 'air'>): Sign {
  if (batch.coat === null) return 'bare';
  if (batch.verdict === null) {
    if (batch.nextGate === null) return 'done';
    return 'no-data';
  }
  if (place.air.at === null && batch.degreeHours === 0) return 'no-data';
  return batch.verdict.verdict;
}

/**
 * Whether what a board shows may be trusted: not when the daemon is lost or its air is old.
 */
export function isFresh(row: WallRow, daemonLost: boolean): boolean {
  if (daemonLost) return false;
  return row.batch === null || row.batch.coat === null || !row.place.air.stale;
}

/** What is wrong at a board. */
export type Wrong =
  | { readonly kind: 'no-sensor' }
  /** `at`: the last reading, UTC epoch ms. */
  | { readonly kind: 'old-figures'; readonly at: number }
  | { readonly kind: 'poor-air'; readonly why: PoorAir }
  | { readonly kind: 'said'; readonly sentence: Told };

type PoorAir = 'few' | 'stagnant' | 'damp' | 'other';

/** What is wrong at a board, the loudest first. */
export function wrongAt(row: Pick<WallRow, 'place' | 'batch'>, overview: Overview): Wrong[] {
  const { place, batch } = row;
  const wrong: Wrong[] = [];
  if (batch === null) return wrong;
  if (place.air.at === null) wrong.push({ kind: 'no-sensor' });
  else if (place.air.stale) wrong.push({ kind: 'old-figures', at: Date.parse(place.air.at) });
  if (place.airflow === 'poor') wrong.push({ kind: 'poor-air', why: whyPoor(place.airReasons) });
  for (const reason of batch.verdict?.reasons ?? []) {
    // A failed test is news until it is worth feeling again.
    const isOver = reason.code === 'failed-test' && batch.verdict?.verdict !== 'wait';
    if (isTrouble.has(reason.code) && !isOver) wrong.push({ kind: 'said', sentence: reason });
  }
  const known = new Set(wrong.map((one) => (one.kind === 'said' ? one.sentence.text : '')));
  for (const notice of overview.notices) {
    const about = notice.subject === place.id || notice.subject === batch.id;
    if (!about || !isOpen(notice) || shownElsewhere.has(notice.kind) || known.has(notice.text)) {
      continue;
    }
    known.add(notice.text);
    wrong.push({ kind: 'said', sentence: notice });
  }
  return wrong;
}

const poorAir: Readonly<Record<string, PoorAir>> = {
  'air-changes-few': 'few',
  'air-stagnant': 'stagnant',
  'air-damp-long': 'damp',
};

function whyPoor(reasons: OverviewPlace['airReasons']): PoorAir {
  return reasons.map(({ code }) => poorAir[code]).find((why) => why !== undefined) ?? 'other';
}

/**
 * What is wrong, in words for someone passing by.
 *
 * @param now - the daemon’s time, UTC epoch ms
 */
export function wrongLine(wrong: Wrong, { words, say }: Reader, now: number): string {
  switch (wrong.kind) {
    case 'no-sensor':
      return words.wall.noSensor;
    case 'old-figures':
      return words.wall.oldFigures(words.times.ago(agoOf(wrong.at, now)));
    case 'poor-air':
      return words.air.poor[wrong.why];
    case 'said':
      return say(wrong.sentence);
  }
}

/** Reasons that someone can do something about, or should know of before trusting the word. */
const isTrouble = new Set(['too-cold-to-cure', 'gaps', 'failed-test', 'heat']);

/** Said by the word itself, by the air line, or at the foot of the wall. */
const shownElsewhere = new Set(['gate-ready', 'place-silent', 'batch-without-air', 'rags']);

/** Notices for the foot of the wall: what belongs to no board, and the rags. */
export function footNotices(overview: Overview): Overview['notices'] {
  const boards = new Set(
    wallRows(overview).flatMap(({ place, batch }) => (batch === null ? [] : [place.id, batch.id])),
  );
  return overview.notices.filter((notice) => {
    if (!isOpen(notice)) return false;
    if (notice.kind === 'rags') return notice.seenAt === null;
    return notice.kind !== 'gate-ready' && !boards.has(notice.subject);
  });
}

function isOpen(notice: Overview['notices'][number]): boolean {
  return notice.clearedAt === null;
}
