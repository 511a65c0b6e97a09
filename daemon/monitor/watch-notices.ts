import type { OverviewBatch } from '../contract/overview.ts';
import type { Sentence } from '../contract/sentence.ts';
import { lookIsDue, lookWords } from '../rules/coating-steps.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { NewNoticeFact } from '../rules/facts.ts';
import { faultReason } from '../rules/fault/fault-reason.ts';
import { mountingIsOpen } from '../rules/mounting.ts';
import {
  type NoticeLimits,
  type NoticeView,
  noticeChanges,
  ragRepeats,
  wantedNotices,
} from '../rules/notice.ts';
import { noticeKinds } from '../rules/notice-kind.ts';
import { sensorsHeard, stayAt } from '../rules/place.ts';
import type { placesOverview } from './overview.ts';
import type { FactSource } from './ports.ts';
import { plannedCoatOf, type SiteFacts } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

export interface NoticeKeeper {
  /** Settles when all of it is kept. */
  changeNotices(
    raised: NewNoticeFact[],
    clearedIds: string[],
    at: number,
    repeatedIds: string[],
  ): Promise<void>;
}

interface WatchParts {
  facts: () => SiteFacts;
  source: Pick<FactSource, 'notices'>;
  overview: ReturnType<typeof placesOverview>;
  trade: TradeView;
  keeper: NoticeKeeper;
  newId: () => string;
  vapour: (now: number) => NonNullable<NoticeView['vapour']>;
  limits: NoticeLimits & { ragRepeatHours: number };
}

/** A batch that was ready stays so down to this probability. Assumption. */
const nearlyReady = 0.8;

/** Raises and clears notices so that the open ones are those that are so now. */
export function noticeWatch(parts: WatchParts) {
  const { facts, source, overview, keeper, newId, limits, trade } = parts;
  /** Since when an open notice is over, by its id. */
  const overSince = new Map<string, number>();

  function view(now: number): NoticeView {
    const { sensors, stays, places, faults } = facts();
    const shown = overview(now);
    return {
      unplacedSensors: [...sensors.values()].filter(
        (sensor) => stayAt(stays.get(sensor.key) ?? [], now) === null,
      ),
      faults: faults.flatMap((fault) => {
        const sensor = sensors.get(fault.sensorKey);
        const stay = stayAt(stays.get(fault.sensorKey) ?? [], now);
        if (fault.untilAt !== null || !sensor || stay === null) return [];
        return [{ sensorId: sensor.id, reason: faultReason(fault, sensor, now) }];
      }),
      places: shown.map((place) => ({
        id: place.id,
        name: place.name,
        hasSensor: sensorsHeard(places, stays, place.id).length > 0,
        stale: place.air.stale,
        at: place.air.at === null ? null : Date.parse(place.air.at),
        insideC: place.kind === 'room' || place.kind === 'rack' ? place.air.tempC : null,
      })),
      batches: shown.flatMap((place) =>
        place.batches.map((batch) => ({
          id: batch.id,
          name: batch.name,
          placeId: place.id,
          placeName: place.name,
          curing: batch.coat !== null && batch.nextGate !== null,
          ...readiness(batch),
          lookFor: lookFor(batch.id, now),
          mountingOpen: mountingOpen(batch.id, now),
        })),
      ),
      vapour: parts.vapour(now),
    };
  }

  /** True once a notice has been over for as long as its kind asks for. */
  function isCalm({ id, kind }: { id: string; kind: keyof typeof noticeKinds }, now: number) {
    const since = overSince.get(id) ?? now;
    overSince.set(id, since);
    return now - since >= noticeKinds[kind].calmMinutes * 60_000;
  }

  function lookFor(batchId: string, now: number): Sentence | null {
    const coat = facts().coats.get(batchId)?.at(-1);
    if (!coat) return null;
    const remarks = facts().remarks.get(batchId) ?? [];
    if (!lookIsDue(coat, remarks, now, trade.rules.look)) return null;
    return lookWords(plannedCoatOf(facts(), coat));
  }

  function mountingOpen(batchId: string, now: number): boolean {
    const { moves, places, mountingTicks } = facts();
    return (moves.get(batchId) ?? []).some(({ id, at, placeId }) => {
      if (at === null || places.get(placeId)?.kind !== 'wall') return false;
      return mountingIsOpen(at, mountingTicks.get(id)?.length ?? 0, now);
    });
  }

  return async (now: number): Promise<boolean> => {
    const open = source.notices().filter((notice) => notice.clearedAt === null);
    const { raise, clear: over } = noticeChanges(open, wantedNotices(view(now), limits));
    for (const id of overSince.keys()) {
      if (!over.some((notice) => notice.id === id)) overSince.delete(id);
    }
    const clear = over.filter((notice) => isCalm(notice, now));
    const coatFinishedAt = (id: string) => facts().coats.get(id)?.at(-1)?.finishedAt ?? null;
    const repeat = ragRepeats(open, coatFinishedAt, now, limits.ragRepeatHours * hourMs);
    if (raise.length + clear.length + repeat.length === 0) return false;
    const raised = raise.map((one) => ({
      ...{ id: newId(), kind: one.kind, subject: one.subject },
      ...{ text: one.text, told: one.told ?? null },
      raisedAt: now,
      seenAt: null,
      clearedAt: null,
    }));
    await keeper.changeNotices(
      raised,
      clear.map(({ id }) => id),
      now,
      repeat.map(({ id }) => id),
    );
    return true;
  };
}

/** The job a batch is cured enough for, and the one it still is within the slack. */
function readiness({ nextGate, verdict }: OverviewBatch) {
  const isReady = verdict?.verdict === 'ready' || verdict?.verdict === 'hold';
  const isNear = verdict !== null && verdict.probability >= nearlyReady;
  return { readyFor: isReady ? nextGate : null, nearlyReadyFor: isNear ? nextGate : null };
}
