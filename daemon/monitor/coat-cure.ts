import { type CureStay, curedUntil, cureStays } from '../rules/batch.ts';
import { add, hourMs, noCure, type SpanSum } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import type { CoatProgress, RateAhead } from '../rules/gate-verdict.ts';
import { degreeHoursPerEquivalentHour, rateAt } from '../science/cure.ts';
import type { CureLedger } from './cure-ledger.ts';
import type { NamedModel } from './hour-book.ts';
import { curing } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';

/** The model that rules, and the one carried beside it. */
export interface ModelPair {
  ruling: NamedModel;
  beside: NamedModel;
}

/** How far a coat has come, with what is needed to check and to look ahead. */
export interface CoatCure {
  progress: CoatProgress;
  equivalentHours: number;
  besideEquivalentHours: number;
  ahead: RateAhead | null;
  aheadFromAt: number;
  endedAt: number | null;
}

/** Stretch before the newest reading whose mean is taken for what is to come. */
const outlookMs = 24 * hourMs;
/** Less than this much of it is no mean: the newest reading then speaks alone, h. */
const outlookLeastHours = 0.5;

interface CureParts {
  facts: () => SiteFacts;
  ledger: CureLedger;
  air: PlaceAirReader;
  models: ModelPair;
  staleMs: number;
}

/** The cure of coats, from the ledger and the places where their batches lay. */
export function coatCures({ facts, ledger, air, models, staleMs }: CureParts) {
  const { ruling, beside } = models;
  const perHour = degreeHoursPerEquivalentHour(ruling.model);
  const besidePerHour = degreeHoursPerEquivalentHour(beside.model);

  function stays(coat: CoatFact): CureStay[] {
    const { batches, coats, moves } = facts();
    return cureStays(
      coat,
      coats.get(coat.batchId) ?? [],
      moves.get(coat.batchId) ?? [],
      batches.get(coat.batchId)?.closedAt ?? null,
    );
  }

  function total(ofStays: readonly CureStay[], model: NamedModel, untilAt: number | null): SpanSum {
    const sum = noCure();
    for (const stay of ofStays) {
      const toAt = untilAt === null ? stay.toAt : Math.min(stay.toAt ?? untilAt, untilAt);
      if (toAt !== null && toAt <= stay.fromAt) continue;
      add(sum, ledger.sum(stay.placeId, model, stay.fromAt, toAt));
    }
    return sum;
  }

  function outlook(placeId: string, now: number): { ahead: RateAhead | null; fromAt: number } {
    const last = air.latest(placeId, curing);
    if (!last) return { ahead: null, fromAt: now };
    const mean = (named: NamedModel) => {
      const day = ledger.sum(placeId, named, last.at - outlookMs, null);
      return day.covered >= outlookLeastHours
        ? day.low / day.covered
        : rateAt(named.model, last.value);
    };
    return {
      ahead: { perHour: mean(ruling) * perHour, otherPerHour: mean(beside) * besidePerHour },
      fromAt: now - last.at > staleMs ? now : Math.min(last.at, now),
    };
  }

  return {
    /** The coat’s sum at a moment, °C·h by the ruling model, heat above the cap left out. */
    degreeHoursAt: (coat: CoatFact, at: number): number =>
      total(stays(coat), ruling, at).capped * perHour,

    cureOf(coat: CoatFact, now: number): CoatCure {
      const ofStays = stays(coat);
      const sum = total(ofStays, ruling, null);
      const other = total(ofStays, beside, null);
      const current = ofStays.at(-1);
      const endedAt = current?.toAt ?? null;
      const lastReadingAt = current ? (air.latest(current.placeId, curing)?.at ?? null) : null;
      const elapsedHours = Math.max(0, (Math.min(endedAt ?? now, now) - coat.finishedAt) / hourMs);
      const { ahead, fromAt } =
        current && endedAt === null ? outlook(current.placeId, now) : { ahead: null, fromAt: now };
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
        ahead,
        aheadFromAt: Math.max(fromAt, coat.finishedAt),
        endedAt: endedAt ?? curedUntil(coat, facts().coats.get(coat.batchId) ?? []),
      };
    },
  };
}
export type CoatCures = ReturnType<typeof coatCures>;
