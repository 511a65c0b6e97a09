import type { Overview } from '../../daemon/contract/overview.ts';
import { agoWords } from '../format/painters-time.ts';
import { poorAirWords } from '../words/thing-words.ts';
import type { Sign } from '../words/verdict-words.ts';

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

/**
 * What is wrong at a board, the loudest first, in words for someone passing by.
 *
 * @param now - the daemon’s time, UTC epoch ms
 */
export function wrongAt(row: WallRow, overview: Overview, now: number): string[] {
  const { place, batch } = row;
  const wrong: string[] = [];
  if (batch === null) return wrong;
  if (place.air.at === null) wrong.push('No sensor tells how the air is here.');
  else if (place.air.stale) {
    wrong.push(`Old figures: the last reading came ${agoWords(Date.parse(place.air.at), now)}.`);
  }
  if (place.airflow === 'poor') {
    wrong.push(poorAirWords(place.airReasons));
  }
  for (const reason of batch.verdict?.reasons ?? []) {
    // A failed test is news until it is worth feeling again.
    const isOver = reason.code === 'failed-test' && batch.verdict?.verdict !== 'wait';
    if (isTrouble.has(reason.code) && !isOver) wrong.push(reason.text);
  }
  for (const notice of overview.notices) {
    const about = notice.subject === place.id || notice.subject === batch.id;
    if (about && isOpen(notice) && !shownElsewhere.has(notice.kind)) wrong.push(notice.text);
  }
  return [...new Set(wrong)];
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
