import { toMoment } from '../contract/moment.ts';
import type { SiteRecord } from '../contract/record.ts';
import { placeOfBatch } from './batch.ts';
import type { MoveFact } from './facts.ts';
import type { KnownFacts } from './known-facts.ts';
import type { PhotoFact } from './photo.ts';

/** What people recorded of batches. */
export type RecordedAtSite = Readonly<
  Pick<
    KnownFacts,
    | 'places'
    | 'plans'
    | 'batches'
    | 'begun'
    | 'moves'
    | 'coats'
    | 'tests'
    | 'remarks'
    | 'handReadings'
    | 'splits'
    | 'merges'
  >
>;

/**
 * Everything that people recorded of all batches, each once, in no particular order. What boards
 * share is listed at the batch it was recorded at.
 *
 * @param photosOf - the photos of a batch
 */
export function siteRecords(
  facts: RecordedAtSite,
  photosOf: (batchId: string) => readonly PhotoFact[],
): SiteRecord[] {
  const { places, plans, batches } = facts;
  const batch = (id: string | null) => {
    const known = id === null ? undefined : batches.get(id);
    return {
      batchId: known?.id ?? null,
      batchName: known?.name ?? null,
      batchClosed: known !== undefined && known.closedAt !== null,
    };
  };
  const place = (id: string | null) => ({
    placeId: id,
    placeName: id === null ? null : (places.get(id)?.name ?? null),
  });
  const other = (id: string) => ({
    otherBatchId: id,
    otherBatchName: batches.get(id)?.name ?? null,
  });
  const coatName = (batchId: string, coat: number, planId?: string | null) =>
    plans.get(planId ?? batches.get(batchId)?.planId ?? '')?.coats[coat]?.name ?? null;
  // A batch is begun before boards are split off it, so what both share is met at its origin first.
  const ids = [...batches.keys()];
  const shared = <T extends { id: string }>(by: ReadonlyMap<string, readonly T[]>): T[] =>
    eachOnce(ids.flatMap((id) => by.get(id) ?? []));
  const coats = shared(facts.coats);
  const coatOf = new Map(coats.map((coat) => [coat.id, coat]));

  return [
    ...facts.begun.map((one) =>
      record('batch', one.id, one.createdAt, {
        ...batch(one.id),
        ...place(placeOfBatch([...(facts.moves.get(one.id) ?? [])], one.createdAt)),
        boards: one.boards.count,
      }),
    ),
    ...coats.map((one) =>
      record('coat', one.id, one.finishedAt, {
        ...batch(one.originId ?? one.batchId),
        coat: one.coat,
        coatName: coatName(one.batchId, one.coat, one.planId),
        usedL: one.usedL,
        colour: one.colour,
        tin: one.tin,
      }),
    ),
    ...eachOnce([...facts.tests.values()].flat()).map((one) => {
      const coat = coatOf.get(one.coatId);
      return record('test', one.id, one.at, {
        ...batch(one.batchId),
        coat: coat?.coat ?? null,
        coatName: coat ? coatName(coat.batchId, coat.coat, coat.planId) : null,
        gate: one.gate,
        passed: one.passed,
      });
    }),
    ...shared(facts.moves)
      .filter((one): one is MoveFact & { at: number } => one.at !== null)
      .map((one) =>
        record('move', one.id, one.at, { ...batch(one.batchId), ...place(one.placeId) }),
      ),
    ...shared(facts.remarks).map((one) =>
      record('remark', one.id, one.at, {
        ...batch(one.batchId),
        remark: one.kind,
        text: one.text,
        automatic: one.automatic ?? false,
      }),
    ),
    ...facts.handReadings.map((one) =>
      record('hand-reading', one.id, one.at, {
        ...batch(one.batchId),
        ...place(one.placeId),
        quantity: one.quantity,
        values: [...one.values],
      }),
    ),
    ...ids.flatMap((id) =>
      photosOf(id).map((one) =>
        record('photo', one.id, one.at, {
          ...batch(id),
          text: one.text,
          address: `/api/v1/photos/${one.id}`,
        }),
      ),
    ),
    ...facts.splits.map((one) =>
      record('split', one.id, one.at, {
        ...batch(one.batchId),
        ...other(one.childId),
        boards: one.boards,
      }),
    ),
    ...facts.merges.map((one) =>
      record('merge', one.id, one.at, {
        ...batch(one.batchId),
        ...other(one.mergedId),
        boards: batches.get(one.mergedId)?.boards.count ?? null,
      }),
    ),
  ];
}

const nothing = {
  ...{ batchId: null, batchName: null, batchClosed: false, placeId: null, placeName: null },
  ...{ coat: null, coatName: null, usedL: null, colour: null, tin: null, gate: null },
  ...{ passed: null, remark: null, automatic: false, text: null, quantity: null, values: [] },
  ...{ boards: null, otherBatchId: null, otherBatchName: null, address: null },
} satisfies Omit<SiteRecord, 'id' | 'kind' | 'at'>;

function record(
  kind: SiteRecord['kind'],
  id: string,
  at: number,
  known: Partial<SiteRecord>,
): SiteRecord {
  return { ...nothing, values: [], ...known, id, kind, at: toMoment(at) };
}

function eachOnce<T extends { id: string }>(facts: readonly T[]): T[] {
  const seen = new Set<string>();
  return facts.filter(({ id }) => {
    if (seen.has(id)) return false;
    seen.add(id);
    return true;
  });
}
