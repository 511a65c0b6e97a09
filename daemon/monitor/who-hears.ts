import type { ReadingFact } from '../rules/facts.ts';
import { airSources, placesFed, stayAt } from '../rules/place.ts';
import type { HeardReading } from '../rules/place-series.ts';
import { type Followed, followed } from './followed.ts';
import type { Corrected, FlagBits } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

interface HearingParts {
  facts: () => SiteFacts;
  corrected: Corrected;
  flags: FlagBits;
}

/** What a place hears of a quantity, in the order of arrival. */
interface Heard {
  placeId: string;
  quantity: Followed;
  readings: HeardReading[];
}

const isFollowed = (quantity: string): quantity is Followed => quantity in followed;

/** Which places hear a reading, and from how far: one is heard where its sensor hangs, and about it. */
export function whoHears({ facts, corrected, flags }: HearingParts) {
  const fed = new Map<string, { placeId: string; level: number }[]>();

  /** The places that hear a sensor at a place, with how far away it is for each. */
  function fedBy(sourceId: string): { placeId: string; level: number }[] {
    let known = fed.get(sourceId);
    if (!known) {
      const { places } = facts();
      known = placesFed(places, sourceId).map((placeId) => ({
        placeId,
        level: airSources(places, placeId).indexOf(sourceId),
      }));
      fed.set(sourceId, known);
    }
    return known;
  }

  return {
    /** What places hear of readings that came in. */
    of(fresh: readonly ReadingFact[]): Heard[] {
      const heard = new Map<string, Heard>();
      for (const reading of fresh) {
        const { sensorKey, quantity, at } = reading;
        if ((reading.flags & flags.timeUnknown) !== 0 || !isFollowed(quantity)) continue;
        const stay = stayAt(facts().counted(quantity).get(sensorKey) ?? [], at);
        if (!stay) continue;
        for (const { placeId, level } of fedBy(stay.placeId)) {
          const key = `${placeId} ${quantity}`;
          const group = heard.get(key) ?? { placeId, quantity, readings: [] };
          const value = corrected(reading);
          group.readings.push({ sensorKey, at, value, level, untilAt: stay.untilAt });
          heard.set(key, group);
        }
      }
      return [...heard.values()];
    },
    /** Called after a sensor or a place was moved. */
    forget: (): void => fed.clear(),
  };
}
