import { toMoment } from '../contract/moment.ts';
import type { BatchReport, Season } from '../contract/report.ts';
import { usualApplicationLimits } from '../rules/application-limits.ts';
import { type AirHour, summarized } from '../rules/conditions.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { BatchFact, CoatFact } from '../rules/facts.ts';
import { brierScore, seasonRows, testBins } from '../rules/season-summary.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { CoatHistory } from './coat-history.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';

interface ReportParts {
  facts: () => SiteFacts;
  air: PlaceAirReader;
  assess: BatchAssessor;
  /** Every coat once, at the batch where it was recorded. */
  recorded: () => CoatFact[];
  history: CoatHistory;
  /** `yyyy-mm` of a moment on the site’s calendar. */
  monthOf: (at: number) => string;
}

/** What the monitor knows of a report; site and photos are added where they are known. */
export type ReportCore = Omit<BatchReport, 'site' | 'photos'>;

/** Reports of batches, and of a season. */
export function batchReporter({ facts, air, assess, recorded, history, monthOf }: ReportParts) {
  /** The air over a coat by the hour, following its batch from place to place. */
  function hoursBetween(coat: CoatFact, from: number, to: number): AirHour[] {
    const before = history.stays(coat);
    const first = before[0];
    // At the brush it lay where it began to cure.
    const stays = first ? [{ ...first, fromAt: Number.NEGATIVE_INFINITY }, ...before.slice(1)] : [];
    return stays.flatMap((stay) => {
      const [begin, end] = [Math.max(from, stay.fromAt), Math.min(to, stay.toAt ?? to)];
      if (begin >= end) return [];
      const damp = new Map(
        air
          .sparse(stay.placeId, 'relative-humidity', begin, end, hourMs)
          .map((sample) => [sample.at, sample.value]),
      );
      return air
        .sparse(stay.placeId, 'air-temperature', begin, end, hourMs)
        .map(({ at, value }) => ({ tempC: value, rhPercent: damp.get(at) ?? null }));
    });
  }

  return {
    report(batch: BatchFact, now: number): ReportCore {
      const { coats, places } = facts();
      const reply = assess.batch(batch, now);
      return {
        madeAt: toMoment(now),
        batch: reply,
        placeNames: Object.fromEntries([...places.values()].map(({ id, name }) => [id, name])),
        coats: (coats.get(batch.id) ?? []).map((coat) => {
          const areaM2 = history.record(coat, now)?.areaM2 ?? 0;
          const over = (from: number, to: number) =>
            summarized(hoursBetween(coat, from, to), usualApplicationLimits);
          const { finishedAt } = coat;
          const endAt = history.endOf(coat, now);
          const reached = history.reached(coat, now);
          return {
            coatId: coat.id,
            name: reply.coats.find((one) => one.id === coat.id)?.name ?? '',
            areaM2,
            spreadingM2PerL: coat.usedL === null ? null : areaM2 / coat.usedL,
            atTheBrush: over(coat.begunAt ?? finishedAt - hourMs, finishedAt),
            firstDay: over(finishedAt, Math.min(finishedAt + 24 * hourMs, endAt)),
            whileCuring: over(finishedAt, endAt),
            reached: Object.fromEntries(
              Object.entries(reached).map(([gate, at]) => [gate, toMoment(at)]),
            ),
          };
        }),
      };
    },

    season(from: number | null, to: number | null, now: number): Season {
      const { places } = facts();
      const records = recorded()
        .filter(({ finishedAt }) => finishedAt >= (from ?? finishedAt) && finishedAt <= (to ?? now))
        .map((coat) => history.record(coat, now))
        .filter((record) => record !== null);
      return {
        madeAt: toMoment(now),
        from: toMoment(from),
        to: toMoment(to),
        rows: seasonRows(records, monthOf).map((row) => ({
          ...row,
          placeName: places.get(row.placeId)?.name ?? row.placeId,
        })),
        modelAgainstTests: {
          tests: records.reduce((sum, record) => sum + record.tests.length, 0),
          brier: brierScore(records),
          bins: testBins(records),
        },
      };
    },
  };
}
export type BatchReporter = ReturnType<typeof batchReporter>;
