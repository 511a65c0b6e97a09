import { dewHours, type HourOfAir, marksWhileWetHours } from '../rules/dew-night.ts';
import type { RemarkFact } from '../rules/facts.ts';
import { localTime } from '../rules/local-time.ts';
import { sentence } from '../wording/english.ts';
import { follower } from './air-grid.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

const hourMs = 3_600_000;
/** How far back a look goes; a night is seen whole once, whatever was asleep meanwhile. */
const lookBackMs = 24 * hourMs;
/** A reading speaks for an hour as long as it is not older than this. */
const freshMs = 2 * hourMs;

interface NightParts {
  facts: () => SiteFacts;
  air: Pick<PlaceAirReader, 'eachSample'>;
  assess: BatchAssessor;
  trade: TradeView;
  newId: () => string;
}

/** Finds wet film on which dew fell, once a night and batch, to be marked as a remark. */
export function nightWatch({ facts, air, assess, trade, newId }: NightParts) {
  const { timeZone } = trade.rules;
  /** The night belongs to the day on which it began. */
  const nightOf = (at: number) => localTime(at - 12 * hourMs, timeZone).day;

  function hoursAt(placeId: string, fromAt: number, toAt: number): HourOfAir[] {
    const temperature = follower(air.eachSample(placeId, 'air-temperature', fromAt, toAt), freshMs);
    const humidity = follower(air.eachSample(placeId, 'relative-humidity', fromAt, toAt), freshMs);
    const hours: HourOfAir[] = [];
    for (let at = fromAt; at <= toAt; at += hourMs) {
      const tempC = temperature(at);
      const rhPercent = humidity(at);
      if (tempC === null || rhPercent === null) continue;
      hours.push({ at, tempC, rhPercent, surfaceTempC: null });
    }
    return hours;
  }

  return (now: number): RemarkFact[] => {
    const { batches, coats, remarks, places } = facts();
    return [...batches.values()].flatMap((batch) => {
      const coat = coats.get(batch.id)?.at(-1);
      if (!coat || batch.closedAt !== null) return [];
      if (now - coat.finishedAt > marksWhileWetHours * hourMs + lookBackMs) return [];
      const { stage } = assess.coat(coat, now);
      if (stage !== 'wet' && stage !== 'set-to-touch') return [];
      const { placeId, since } = trade.lies(batch.id, now);
      const place = places.get(placeId);
      if (!place) return [];
      const arrivedAt = since === null ? coat.finishedAt : Date.parse(since);
      const fromAt = Math.max(coat.finishedAt, arrivedAt, now - lookBackMs);
      const marked = new Set(
        (remarks.get(batch.id) ?? [])
          .filter(({ kind }) => kind === 'dew-night')
          .map(({ at }) => nightOf(at)),
      );
      const hours = hoursAt(placeId, fromAt, now);
      const first = dewHours(hours, place, batch.boards.thicknessMm).find(
        ({ at }) => !marked.has(nightOf(at)),
      );
      if (!first) return [];
      const { tempC, rhPercent } = first;
      const { text, ...told } = sentence('dew-night', { placeName: place.name, tempC, rhPercent });
      return [
        {
          ...{ id: newId(), batchId: batch.id, at: first.at, text, told },
          ...{ kind: 'dew-night' as const, automatic: true },
        },
      ];
    });
  };
}
