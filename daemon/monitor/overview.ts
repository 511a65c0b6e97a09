import type { GateVerdict } from '../contract/gate.ts';
import type { OverviewBatch, OverviewPlace } from '../contract/overview.ts';
import { placeReply } from '../rules/fact-reply.ts';
import type { BatchFact } from '../rules/facts.ts';
import { nextJob } from '../rules/next-job.ts';
import type { AirWatch } from './air-watch.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { PlaceAirReader } from './place-air.ts';
import { type PlaceNow, placeAirReply } from './place-now.ts';
import type { SiteFacts } from './site-facts.ts';

interface OverviewParts {
  facts: () => SiteFacts;
  air: PlaceAirReader;
  now: PlaceNow;
  assess: BatchAssessor;
  airWatch: AirWatch;
}

/** Every place with its air and the batches that lie there and are not done. */
export function placesOverview({ facts, air, now: read, assess, airWatch }: OverviewParts) {
  function airflowAt(
    placeId: string,
    at: number,
  ): Pick<OverviewPlace, 'airflow' | 'airReasons' | 'airChange'> {
    const { verdict, airChange } = airWatch.verdictAt(placeId, at);
    const { perHour, low, high } = airChange?.identifiable ? airChange : {};
    const isKnown = perHour !== undefined && low !== undefined && high !== undefined;
    return {
      airflow: verdict.airflow,
      airReasons: verdict.reasons,
      airChange: isKnown ? { perHour, low, high } : null,
    };
  }

  function batchAt(batch: BatchFact, at: number): OverviewBatch & { placeId: string } {
    const { plans, coats, places } = facts();
    const { placeId } = assess.summary(batch, at);
    const fact = (coats.get(batch.id) ?? []).at(-1) ?? null;
    const plan = plans.get(batch.planId);
    const coat = fact ? assess.coat(fact, at) : null;
    const job = nextJob(
      fact?.coat ?? null,
      plan?.coats.length ?? 0,
      places.get(placeId)?.kind ?? 'room',
    );
    const verdict = coat && job ? coat.gates[job] : null;
    return {
      placeId,
      id: batch.id,
      name: batch.name,
      boards: batch.boards.count,
      coat: coat?.coat ?? null,
      coatName: coat?.name ?? null,
      coatCount: plan?.coats.length ?? 0,
      finishedAt: coat?.finishedAt ?? null,
      stage: coat?.stage ?? null,
      degreeHours: coat?.degreeHours ?? null,
      equivalentHours: coat?.equivalentHours ?? null,
      share: coat && verdict ? shareOf(coat.degreeHours, verdict) : null,
      nextGate: job,
      verdict,
    };
  }

  return (at: number): OverviewPlace[] => {
    const { places, batches } = facts();
    const open = [...batches.values()]
      .filter((batch) => batch.closedAt === null)
      .map((batch) => batchAt(batch, at));
    return [...places.values()].map((place) => ({
      ...placeReply(place),
      air: placeAirReply(air, read, facts(), place.id, at),
      ...airflowAt(place.id, at),
      batches: open
        .filter((batch) => batch.placeId === place.id)
        .map(({ placeId: _, ...batch }) => batch),
    }));
  };
}

/** A test that was passed before any cure was counted leaves nothing to divide by. */
function shareOf(
  degreeHours: number,
  { requiredDegreeHours: { likely } }: GateVerdict,
): number | null {
  return likely > 0 ? degreeHours / likely : null;
}
