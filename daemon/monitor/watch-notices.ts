import type { NoticeFact } from '../rules/facts.ts';
import { gateNeeds } from '../rules/gate-need.ts';
import { type NoticeView, noticeChanges, wantedNotices } from '../rules/notice.ts';
import { sensorsHeard, stayAt } from '../rules/place.ts';
import type { placesOverview } from './overview.ts';
import type { FactSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

export interface NoticeKeeper {
  /** Settles when all of it is kept. */
  changeNotices(raised: NoticeFact[], clearedIds: string[], at: number): Promise<void>;
}

interface WatchParts {
  facts: () => SiteFacts;
  source: Pick<FactSource, 'notices'>;
  overview: ReturnType<typeof placesOverview>;
  keeper: NoticeKeeper;
  newId: () => string;
}

/** Raises and clears notices so that the open ones are those that are so now. */
export function noticeWatch({ facts, source, overview, keeper, newId }: WatchParts) {
  function view(now: number): NoticeView {
    const { sensors, stays, places } = facts();
    const shown = overview(now);
    return {
      unplacedSensors: [...sensors.values()].filter(
        (sensor) => stayAt(stays.get(sensor.key) ?? [], now) === null,
      ),
      places: shown.map((place) => ({
        id: place.id,
        name: place.name,
        hasSensor: sensorsHeard(places, stays, place.id).length > 0,
        stale: place.air.stale,
        at: place.air.at === null ? null : Date.parse(place.air.at),
      })),
      batches: shown.flatMap((place) =>
        place.batches.map((batch) => ({
          id: batch.id,
          name: batch.name,
          placeId: place.id,
          placeName: place.name,
          curing: batch.coat !== null && batch.nextGate !== null,
          readyFor:
            batch.nextGate !== null &&
            (batch.verdict?.verdict === 'ready' || batch.verdict?.verdict === 'hold')
              ? gateNeeds[batch.nextGate].verb
              : null,
        })),
      ),
    };
  }

  return async (now: number): Promise<boolean> => {
    const open = source.notices().filter((notice) => notice.clearedAt === null);
    const { raise, clear } = noticeChanges(open, wantedNotices(view(now)));
    if (raise.length + clear.length === 0) return false;
    const raised = raise.map((one) => ({
      id: newId(),
      ...one,
      raisedAt: now,
      seenAt: null,
      clearedAt: null,
    }));
    await keeper.changeNotices(
      raised,
      clear.map(({ id }) => id),
      now,
    );
    return true;
  };
}
