import type { CurveMark } from '../contract/curves.ts';
import { toMoment } from '../contract/moment.ts';
import { placeOfBatch } from '../rules/batch.ts';
import type { NoticeFact } from '../rules/facts.ts';
import { plannedCoatOf, type SiteFacts, testsOfCoat } from './site-facts.ts';

interface MarkParts {
  facts: () => SiteFacts;
  notices: () => NoticeFact[];
}

/** Most marks of one curve: more cannot be told apart. The newest are kept. */
const mostMarks = 200;

/** What was done, felt, seen and told over the time of a curve. */
export function curveMarks({ facts, notices }: MarkParts) {
  function ofBatch(batchId: string, from: number, to: number): CurveMark[] {
    const site = facts();
    const batch = site.batches.get(batchId);
    if (!batch) return [];
    const within = (at: number) => at >= from && at <= to;
    const of = { batchId, batchName: batch.name };
    const coats = site.coats.get(batchId) ?? [];
    return [
      ...coats
        .filter(({ finishedAt }) => within(finishedAt))
        .map((coat): CurveMark => {
          const name = plannedCoatOf(site, coat)?.name ?? String(coat.coat + 1);
          return { kind: 'coat', at: toMoment(coat.finishedAt), ...of, name };
        }),
      ...coats
        .flatMap((coat) => testsOfCoat(site, coat))
        .filter(({ at }) => within(at))
        .map(({ at, gate, passed }): CurveMark => {
          return { kind: 'test', at: toMoment(at), ...of, gate, passed };
        }),
      ...(site.moves.get(batchId) ?? []).flatMap(({ at, placeId }): CurveMark[] => {
        if (at === null || !within(at)) return [];
        const placeName = site.places.get(placeId)?.name ?? '';
        return [{ kind: 'move', at: toMoment(at), ...of, placeId, placeName }];
      }),
      ...(site.remarks.get(batchId) ?? [])
        .filter(({ at }) => within(at))
        .map(({ at, kind, text }): CurveMark => {
          return { kind: 'remark', at: toMoment(at), ...of, remark: kind, text };
        }),
    ];
  }

  function told(subjects: ReadonlySet<string>, from: number, to: number): CurveMark[] {
    return notices()
      .filter(
        ({ subject, raisedAt }) => subjects.has(subject) && raisedAt >= from && raisedAt <= to,
      )
      .map(({ id, kind, text, told = null, raisedAt }) => ({
        kind: 'notice',
        at: toMoment(raisedAt),
        noticeId: id,
        notice: kind,
        text,
        ...(told ?? { code: kind }),
      }));
  }

  const inOrder = (marks: CurveMark[]) =>
    marks.sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).slice(-mostMarks);

  function sensorsAt(placeIds: ReadonlySet<string>): string[] {
    const { sensors, stays } = facts();
    return [...sensors.values()].flatMap(({ key, id }) =>
      (stays.get(key) ?? []).some(({ placeId }) => placeId !== null && placeIds.has(placeId))
        ? [id]
        : [],
    );
  }

  return {
    /** Of one batch, and of the places where it lay. */
    ofBatch(batchId: string, placeIds: ReadonlySet<string>, from: number, to: number) {
      const subjects = new Set([batchId, ...placeIds, ...sensorsAt(placeIds)]);
      return inOrder([...ofBatch(batchId, from, to), ...told(subjects, from, to)]);
    },
    /** Of a place and of every batch that lay there when it happened. */
    ofPlace(placeId: string, from: number, to: number) {
      const { batches, moves } = facts();
      const there = [...batches.keys()].flatMap((batchId) =>
        ofBatch(batchId, from, to).filter((mark) => {
          const at = Date.parse(mark.at);
          const lay = placeOfBatch(moves.get(batchId) ?? [], at);
          return lay === placeId || placeOfBatch(moves.get(batchId) ?? [], at - 1) === placeId;
        }),
      );
      const subjects = new Set([placeId, ...sensorsAt(new Set([placeId]))]);
      return inOrder([...there, ...told(subjects, from, to)]);
    },
    ofSensor: (sensorId: string, from: number, to: number) =>
      inOrder(told(new Set([sensorId]), from, to)),
  };
}
export type CurveMarks = ReturnType<typeof curveMarks>;
