import { type CureStay, curedUntil } from '../rules/batch.ts';
import type { CoatProgress } from '../rules/coat-progress.ts';
import { add, hourMs, noCure, type SpanSum } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import { degreeHoursPerEquivalentHour, rateAt } from '../science/cure-rate.ts';
import type { CureLedger } from './cure-ledger.ts';
import type { ModelPair, NamedModel } from './hour-book.ts';
import { curing } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { PlaceOutlook, PlaceOutlooks } from './place-outlook.ts';
import { type SiteFacts, staysOfCoat } from './site-facts.ts';

/** How far a coat has come, with what is needed to check and to look ahead. */
export interface CoatCure {
  progress: CoatProgress;
  equivalentHours: number;
  besideEquivalentHours: number;
  outlooks: PlaceOutlook | null;
  gaining: boolean | null;
  staleForMs: number;
  endedAt: number | null;
}

interface CureParts {
  facts: () => SiteFacts;
  ledger: CureLedger;
  air: PlaceAirReader;
  models: ModelPair;
  outlooks: PlaceOutlooks;
  staleMs: number;
}

/** The cure of coats, from the ledger and the places where their batches lay. */
export function coatCures({ facts, ledger, air, models, outlooks, staleMs }: CureParts) {
  const { ruling, beside } = models;
  const perHour = degreeHoursPerEquivalentHour(ruling.model);
  const besidePerHour = degreeHoursPerEquivalentHour(beside.model);

  const stays = (coat: CoatFact): CureStay[] => staysOfCoat(facts(), coat);

  function total(ofStays: readonly CureStay[], model: NamedModel, untilAt: number | null): SpanSum {
    const sum = noCure();
    for (const stay of ofStays) {
      const toAt = untilAt === null ? stay.toAt : Math.min(stay.toAt ?? untilAt, untilAt);
      if (toAt !== null && toAt <= stay.fromAt) continue;
      add(sum, ledger.sum(stay.placeId, model, stay.fromAt, toAt));
    }
    return sum;
  }

  function lookAhead(placeId: string, now: number) {
    const last = air.latest(placeId, curing);
    const agoMs = last ? now - last.at : 0;
    return {
      outlooks: outlooks.outlookAt(placeId),
      gaining: last ? rateAt(ruling.model, last.value) > 0 : null,
      staleForMs: agoMs > staleMs ? agoMs : 0,
    };
  }

  return {
    /** The coat’s sum at a moment, °C·h by the ruling model, heat above the cap left out. */
    degreeHoursAt: (coat: CoatFact, at: number): number =>
      total(stays(coat), ruling, at).capped * perHour,

    /** @param how - without a look ahead, which costs most, there are no outlooks */
    cureOf(
      coat: CoatFact,
      now: number,
      how: 'with outlook' | 'sums alone' = 'with outlook',
    ): CoatCure {
      const ofStays = stays(coat);
      const sum = total(ofStays, ruling, null);
      const other = total(ofStays, beside, null);
      const current = ofStays.at(-1);
      const endedAt = current?.toAt ?? null;
      const lastReadingAt = current ? (air.latest(current.placeId, curing)?.at ?? null) : null;
      const elapsedHours = Math.max(0, (Math.min(endedAt ?? now, now) - coat.finishedAt) / hourMs);
      return {
        progress: {
          degreeHours: sum.capped * perHour,
          uncappedDegreeHours: sum.low * perHour,
          degreeHoursHigh: sum.high * perHour,
          otherDegreeHours: other.capped * besidePerHour,
          coveredHours: sum.covered,
          gapHours: Math.max(0, elapsedHours - sum.covered),
          lastReadingAt:
            lastReadingAt !== null && lastReadingAt >= coat.finishedAt ? lastReadingAt : null,
        },
        equivalentHours: sum.low,
        besideEquivalentHours: other.low,
        ...(current && endedAt === null && how === 'with outlook'
          ? lookAhead(current.placeId, now)
          : { outlooks: null, gaining: null, staleForMs: 0 }),
        endedAt: endedAt ?? curedUntil(coat, facts().coats.get(coat.batchId) ?? []),
      };
    },
  };
}
export type CoatCures = ReturnType<typeof coatCures>;
