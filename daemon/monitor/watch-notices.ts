import { gateNeeds } from '../rules/gate-need.ts';
import { type NoticeView, noticeChanges, wantedNotices } from '../rules/notice.ts';
import { sensorsHeard, stayAt } from '../rules/place.ts';
import type { placesOverview } from './overview.ts';
import type { FactSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

export interface NoticeKeeper {
  raiseNotice(notice: {
    id: string;
    kind: NonNullable<ReturnType<typeof wantedNotices>[number]>['kind'];
    subject: string;
    text: string;
    raisedAt: number;
    seenAt: null;
    clearedAt: null;
  }): Promise<void>;
  clearNotice(id: string, at: number): Promise<void>;
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
    await Promise.all([
      ...raise.map((one) =>
        keeper.raiseNotice({ id: newId(), ...one, raisedAt: now, seenAt: null, clearedAt: null }),
      ),
      ...clear.map((one) => keeper.clearNotice(one.id, now)),
    ]);
    return raise.length + clear.length > 0;
  };
}
