import type { FitToBrush } from '../contract/fit-to-brush.ts';
import { toMoment } from '../contract/moment.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { placeOfBatch } from '../rules/batch.ts';
import { againstHour, latestStop, noStop, wordOfHour } from '../rules/brush-hours.ts';
import { coatedArea } from '../rules/coated-area.ts';
import type { BatchFact, PlaceFact } from '../rules/facts.ts';
import { brushReasons, brushWord, brushWords, rainUnknown } from '../rules/fit-to-brush.ts';
import { marginOf, nightAhead } from '../rules/hour-ahead.ts';
import { airSources } from '../rules/place.ts';
import { rackRoom, runningMetres } from '../rules/rack-capacity.ts';
import { type SolventQuestion, solventCautions } from '../rules/solvent-air.ts';
import type { Hemisphere } from '../rules/wall-sun.ts';
import type { AirAheadReader } from './hours-ahead.ts';
import type { PlaceNow } from './place-now.ts';
import type { SiteFacts } from './site-facts.ts';

interface BrushParts {
  facts: () => SiteFacts;
  placeNow: PlaceNow;
  airAhead: AirAheadReader;
  airChangeAt: (placeId: string, now: number) => { identifiable: boolean; low?: number } | null;
  localLimitPpm(): number | null;
  limits: ApplicationLimits;
  timeZone: string;
  hemisphere: Hemisphere;
}

/** Answers “fit to brush?” for a place, and for the boards that are to be coated there. */
export function brushCheck(parts: BrushParts) {
  const { facts, placeNow, airAhead, limits, timeZone } = parts;

  function moistureOf(placeId: string, batch: BatchFact | null) {
    const ofBatch = (id: string | null) => id !== null && id === batch?.id;
    const figures = facts().handReadings.filter(
      ({ quantity, batchId, placeId: where }) =>
        quantity === 'wood-moisture' && (ofBatch(batchId) || (!batch && where === placeId)),
    );
    return figures.reduce<(typeof figures)[number] | null>(
      (newest, one) => (newest === null || one.at >= newest.at ? one : newest),
      null,
    );
  }

  /** Metres of board on the racks of a place: what they hold, what lies there, what is to come. */
  function shelfOf(place: PlaceFact, batch: BatchFact | null, now: number): FitToBrush['shelf'] {
    const { places, batches, moves } = facts();
    const racks = [...places.values()].filter(
      ({ id, kind }) => kind === 'rack' && airSources(places, id).includes(place.id),
    );
    if (racks.length === 0) return null;
    const onRack = new Map(racks.map(({ id }) => [id, [] as BatchFact['boards'][]]));
    let isThere = false;
    for (const other of batches.values()) {
      if (other.closedAt !== null) continue;
      const lying = onRack.get(placeOfBatch(moves.get(other.id) ?? [], now) ?? '');
      lying?.push(other.boards);
      if (lying && other.id === batch?.id) isThere = true;
    }
    const lengthM = batch === null ? meanLengthM([...onRack.values()].flat()) : lengthOf(batch);
    const rooms = racks.map((rack) => rackRoom(rack, onRack.get(rack.id) ?? [], lengthM));
    return {
      capacityM: sumIfAll(rooms.map(({ capacityM }) => capacityM)),
      usedM: rooms.reduce((sum, { usedM }) => sum + usedM, 0),
      freeM: sumIfAll(rooms.map(({ freeM }) => freeM)),
      neededM: batch === null ? null : isThere ? 0 : runningMetres(batch.boards),
    };
  }

  function solventOf(placeId: string, batch: BatchFact | null, now: number) {
    const { plans, coats, places } = facts();
    const next = batch ? (coats.get(batch.id)?.at(-1)?.coat ?? -1) + 1 : 0;
    const planned = batch ? plans.get(batch.planId)?.coats[next] : undefined;
    if (!batch || !planned) return [];
    const room = airSources(places, placeId)
      .map((id) => places.get(id))
      .find((place) => place?.kind === 'room');
    const change = room ? parts.airChangeAt(room.id, now) : null;
    const question: SolventQuestion = {
      mixture: planned.mixture,
      mixedL:
        coatedArea(batch.boards, planned.faces, planned.coverWidthMm) / planned.spreadingM2PerL,
      hoursSince: 0,
      volumeM3: room?.volumeM3 ?? null,
      airChangesPerHour: change?.identifiable ? (change.low ?? null) : null,
      localLimitPpm: parts.localLimitPpm(),
    };
    return solventCautions(question);
  }

  return (place: PlaceFact, batch: BatchFact | null, now: number): FitToBrush => {
    const { hours, fromForecast } = airAhead(place.id, now);
    const moisture = moistureOf(place.id, batch);
    const shelf = shelfOf(place, batch, now);
    const reasons = brushReasons(
      {
        ...{ kind: place.kind, facing: place.facing, exposure: place.exposure },
        air: placeNow(place.id, now),
        night: nightAhead(hours, now, timeZone),
        moisture,
        isBare: batch === null || (facts().coats.get(batch.id) ?? []).length === 0,
        shelf,
        solvent: solventOf(place.id, batch, now),
        ...{ now, timeZone, hemisphere: parts.hemisphere },
      },
      limits,
    );
    const isOutside = place.kind === 'wall' || place.kind === 'outdoors';
    if (isOutside && !hours.some(({ rainMm }) => rainMm !== null)) {
      reasons.push(rainUnknown());
    }
    const word = brushWord(reasons);
    const wordsSaid = brushWords(word);
    const stop = latestStop(hours, now, limits, timeZone);
    const stopBecauseSaid = stop?.because ?? noStop(hours.length);
    return {
      placeId: place.id,
      placeName: place.name,
      batchId: batch?.id ?? null,
      at: toMoment(now),
      word,
      words: wordsSaid.text,
      wordsSaid,
      reasons,
      hours: hours.map((hour) => {
        const against = againstHour(hour, limits);
        return {
          ...hour,
          at: toMoment(hour.at),
          word: wordOfHour(against, hour),
          dewMarginK: marginOf(hour),
          because: [...against.grave, ...against.mild],
        };
      }),
      stopBy: stop === null ? null : toMoment(stop.at),
      stopBecause: stopBecauseSaid.text,
      stopBecauseSaid,
      worstBoard:
        moisture === null
          ? null
          : {
              percent: Math.max(...moisture.values),
              boards: moisture.values.length,
              at: toMoment(moisture.at),
              limitPercent: limits.dampestWoodPercent,
            },
      shelf,
      fromForecast,
    };
  };
}
export type BrushCheck = ReturnType<typeof brushCheck>;

const lengthOf = (batch: BatchFact) => batch.boards.lengthMm / 1000;

/** Of all boards that lie there, m; null where none does. */
function meanLengthM(lying: readonly BatchFact['boards'][]): number | null {
  const count = lying.reduce((sum, boards) => sum + boards.count, 0);
  return count === 0 ? null : lying.reduce((sum, boards) => sum + runningMetres(boards), 0) / count;
}

/** Null unless each was told. */
function sumIfAll(each: readonly (number | null)[]): number | null {
  return each.reduce((sum, one) => (sum === null || one === null ? null : sum + one), 0);
}
