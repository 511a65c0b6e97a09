import { hourMs } from '../rules/cure-span.ts';
import type { OutdoorForecastPoint } from '../rules/facts.ts';
import type { Sample } from '../rules/place-series.ts';
import { type CureAhead, cureAhead } from '../science/cure-ahead.ts';
import {
  type AirReading,
  type TemperatureOutlook,
  temperatureOutlook,
} from '../science/temperature-outlook.ts';
import type { Followed } from './followed.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';

/** Cure that lies ahead at a place by both models, from its newest reading on. */
export interface PlaceOutlook {
  ruling: CureAhead;
  beside: CureAhead;
  /** The air that both are reckoned from. */
  air: TemperatureOutlook;
}

/** How far back the recorded days are looked at, h: longer teaches an outlook nothing. Assumption. */
const historyHours = 14 * 24;
/** Over so many last hours they are taken as they come, thinned to `thinMs`. */
const closeHours = 6;
/** Readings closer together than this tell an outlook by the hour nothing. */
const thinMs = 10 * 60_000;
/** An outlook stands for this long before it is made again. */
const freshMs = 15 * 60_000;

interface OutlookParts {
  facts: () => SiteFacts;
  air: PlaceAirReader;
  models: ModelPair;
  /** The newest weather forecast that someone sent; empty without one. */
  forecast: () => readonly OutdoorForecastPoint[];
}

/** Looks ahead at places: made once for all the coats of a place. */
export function placeOutlooks({ facts, air, models, forecast }: OutlookParts) {
  const kept = new Map<string, { at: number; outlook: PlaceOutlook | null }>();

  /** By the hour over two weeks, closer together over the last hours. */
  function series(placeId: string, quantity: Followed, lastAt: number): Sample[] {
    const closeFrom = lastAt - closeHours * hourMs;
    const close: Sample[] = [];
    for (const sample of air.eachSample(placeId, quantity, closeFrom, lastAt)) {
      const chosenAt = close.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
      if (sample.at < closeFrom) continue;
      if (sample.at - chosenAt >= thinMs || sample.at === lastAt) close.push(sample);
    }
    const from = lastAt - historyHours * hourMs;
    return [...air.sparse(placeId, quantity, from, closeFrom, hourMs), ...close];
  }

  function history(placeId: string, lastAt: number): AirReading[] {
    const humidity = series(placeId, 'relative-humidity', lastAt);
    let next = 0;
    return series(placeId, 'air-temperature', lastAt).map(({ at, value }) => {
      while ((humidity[next + 1]?.at ?? Number.POSITIVE_INFINITY) <= at) next++;
      const damp = humidity[next];
      const isNear = damp !== undefined && Math.abs(damp.at - at) <= hourMs;
      return { at, tempC: value, rhPercent: isNear ? damp.value : null };
    });
  }

  function outdoorsFor(placeId: string, lastAt: number) {
    const points = forecast();
    if (points.length === 0) return undefined;
    const { places } = facts();
    const outside = [...places.values()].find(
      (place) => place.kind === 'outdoors' && air.latest(place.id, 'air-temperature') !== null,
    );
    if (!outside) return undefined;
    const kind = places.get(placeId)?.kind;
    return {
      history: history(outside.id, lastAt),
      forecast: points,
      isThePlace: kind === 'outdoors' || (kind === 'wall' && air.speaker(placeId) !== 0),
    };
  }

  function make(placeId: string, lastAt: number): PlaceOutlook | null {
    const outdoors = outdoorsFor(placeId, lastAt);
    const outlook = temperatureOutlook(history(placeId, lastAt), outdoors ? { outdoors } : {});
    if (!outlook) return null;
    const { ruling, beside } = models;
    return {
      ruling: cureAhead(outlook, ruling.model, { capC: ruling.capC }),
      beside: cureAhead(outlook, beside.model, { capC: beside.capC }),
      air: outlook,
    };
  }

  return {
    /** What lies ahead at a place from its newest reading; null where none was ever read. */
    outlookAt(placeId: string): PlaceOutlook | null {
      const last = air.latest(placeId, 'air-temperature');
      if (!last) return null;
      let known = kept.get(placeId);
      if (!known || last.at < known.at || last.at - known.at >= freshMs) {
        known = { at: last.at, outlook: make(placeId, last.at) };
        kept.set(placeId, known);
      }
      const { outlook } = known;
      // Made up to a quarter of an hour ago, it is taken to begin at the newest reading.
      return (
        outlook && {
          ruling: { ...outlook.ruling, fromAt: last.at },
          beside: { ...outlook.beside, fromAt: last.at },
          air: { ...outlook.air, fromAt: last.at },
        }
      );
    },
    forget: (): void => kept.clear(),
  };
}
export type PlaceOutlooks = ReturnType<typeof placeOutlooks>;
