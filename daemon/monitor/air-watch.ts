import { type AirEvidence, type AirVerdict, airLimits, airVerdict } from '../rules/air-verdict.ts';
import { placeOfBatch } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import { airSources } from '../rules/place.ts';
import { absoluteHumidity } from '../science/air.ts';
import { type AirChange, type AirSample, estimateAirChange } from '../science/airflow.ts';
import { differences, gridMs, known, mean, onGrid, share, stepper } from './air-grid.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';

/** How far back the vapour balance of a room is looked at, h. */
const balanceHours = 24;
/** A verdict on the air stands for this long before it is made again, unless said otherwise. */
const usualFreshMs = 10 * 60_000;
/** A coat this young gives off what it holds, h. Assumption. */
const youngCoatHours = 12;
/** Timber above this is still drying, % of oven-dry mass. **Source:** public wood guides, 16 to 18 %. */
const dryPercent = 18;

/** Carbon dioxide outdoors, ppm. From memory: the world's mean of the mid 2020s is about 425. */
const outdoorCarbonDioxidePpm = 425;

/** Air changes of a room, and whether they were found by carbon dioxide. */
interface RoomAirChange {
  airChange: AirChange | null;
  byGas: boolean;
}

/** What is to be said of the air at a place. */
export interface AirJudged extends RoomAirChange {
  verdict: AirVerdict;
}

const unknownChange: RoomAirChange = { airChange: null, byGas: false };

interface WatchParts {
  facts: () => SiteFacts;
  air: PlaceAirReader;
  staleMs: number;
  /** How long a verdict stands before it is made again, ms. */
  freshMs?: number;
}

/** Judges the air at places from their humidity and that of what is about them. */
export function airWatch({ facts, air, staleMs, freshMs = usualFreshMs }: WatchParts) {
  const kept = new Map<string, AirJudged & { at: number }>();

  /** Water vapour at a place on the grid, g/m³; null where temperature or humidity is missing. */
  function vapour(placeId: string, from: number, to: number): (number | null)[] {
    const temperature = stepper(air.eachSample(placeId, 'air-temperature', from, to), staleMs);
    const humidity = stepper(air.eachSample(placeId, 'relative-humidity', from, to), staleMs);
    const read = (at: number) => {
      const tempC = temperature(at);
      const rhPercent = humidity(at);
      return tempC === null || rhPercent === null
        ? null
        : absoluteHumidity(tempC, rhPercent, { over: 'water' });
    };
    return onGrid(read, from, to);
  }

  function roomOf(placeId: string): string | null {
    const { places } = facts();
    const sources = airSources(places, placeId);
    return sources.find((id) => places.get(id)?.kind === 'room') ?? null;
  }

  function outdoors(): string | null {
    for (const place of facts().places.values()) {
      if (place.kind === 'outdoors' && air.latest(place.id, 'relative-humidity')) return place.id;
    }
    return null;
  }

  /**
   * Air changes of a room: by carbon dioxide where a sensor has it, which boards do not hold back;
   * else by water vapour against outdoors.
   */
  function airChangeOf(roomId: string, now: number): RoomAirChange {
    const byGas = byCarbonDioxide(roomId, now);
    if (byGas?.identifiable) return { airChange: byGas, byGas: true };
    return { airChange: byVapour(roomId, now) ?? byGas, byGas: false };
  }

  function byCarbonDioxide(roomId: string, now: number): AirChange | null {
    const from = now - balanceHours * hourMs;
    if (air.latest(roomId, 'carbon-dioxide') === null) return null;
    const samples = air.eachSample(roomId, 'carbon-dioxide', from, now);
    const ppm = onGrid(stepper(samples, staleMs), from, now);
    return estimateAirChange(
      ppm.flatMap((value, i) =>
        value === null
          ? []
          : [{ at: from + i * gridMs, insideGM3: value, outsideGM3: outdoorCarbonDioxidePpm }],
      ),
    );
  }

  function byVapour(roomId: string, now: number): AirChange | null {
    const outside = outdoors();
    if (outside === null || !air.latest(roomId, 'relative-humidity')) return null;
    const from = now - balanceHours * hourMs;
    const inside = vapour(roomId, from, now);
    const beside = vapour(outside, from, now);
    const samples: AirSample[] = [];
    inside.forEach((insideGM3, i) => {
      const outsideGM3 = beside[i];
      if (insideGM3 === null || outsideGM3 === null || outsideGM3 === undefined) return;
      samples.push({ at: from + i * gridMs, insideGM3, outsideGM3 });
    });
    return estimateAirChange(samples);
  }

  function evidence(placeId: string, ofRoom: RoomAirChange, now: number): AirEvidence {
    const { places } = facts();
    const from = now - airLimits.lookBackHours * hourMs;
    const roomId = roomOf(placeId);
    const isRack = places.get(placeId)?.kind === 'rack' && hasOwnAir(placeId);
    const excess =
      isRack && roomId !== null && hasOwnAir(roomId)
        ? differences(vapour(placeId, from, now), vapour(roomId, from, now))
        : [];
    const humidity = known(
      onGrid(stepper(air.eachSample(placeId, 'relative-humidity', from, now), staleMs), from, now),
    );
    return {
      airChange: ofRoom.airChange,
      stagnantShare: share(excess, (value) => value > airLimits.excessGM3),
      excessGM3: mean(excess),
      dampShare: share(humidity, (value) => value > airLimits.rhPercent),
      rhPercent: mean(humidity),
      colderByK: isRack && roomId !== null ? colderThanOthers(placeId, roomId, now) : null,
      givesOffWater: givesOffWater(placeId, now),
      buffered: !ofRoom.byGas && holdsBoards(roomId ?? placeId, now),
    };
  }

  const hasOwnAir = (placeId: string) =>
    air.latest(placeId, 'relative-humidity') !== null && air.speaker(placeId) === 0;

  function colderThanOthers(placeId: string, roomId: string, now: number): number | null {
    const own = air.latest(placeId, 'air-temperature');
    if (!own || now - own.at > staleMs) return null;
    let colderByK: number | null = null;
    for (const other of facts().places.values()) {
      if (other.kind !== 'rack' || other.within !== roomId || other.id === placeId) continue;
      const there = hasOwnAir(other.id) ? air.latest(other.id, 'air-temperature') : null;
      if (!there || now - there.at > staleMs) continue;
      colderByK = Math.max(colderByK ?? 0, there.value - own.value);
    }
    return colderByK;
  }

  /** Whether boards lie in a room, on its racks or in it. */
  function holdsBoards(roomId: string, now: number): boolean {
    const { batches, moves, places } = facts();
    return [...batches.values()].some((batch) => {
      const placeId = placeOfBatch(moves.get(batch.id) ?? [], now);
      return (
        batch.closedAt === null && placeId !== null && airSources(places, placeId).includes(roomId)
      );
    });
  }

  function givesOffWater(placeId: string, now: number): boolean {
    const { batches, moves, coats, handReadings } = facts();
    return [...batches.values()].some((batch) => {
      if (batch.closedAt !== null) return false;
      if (placeOfBatch(moves.get(batch.id) ?? [], now) !== placeId) return false;
      const young = (coats.get(batch.id) ?? []).some(
        (coat) => now - coat.finishedAt < youngCoatHours * hourMs,
      );
      const measured = handReadings
        .filter((one) => one.batchId === batch.id && one.quantity === 'wood-moisture')
        .at(-1);
      return young || (measured !== undefined && Math.max(...measured.values) > dryPercent);
    });
  }

  return {
    /** The verdict on the air at a place; made anew every ten minutes of the site’s time. */
    verdictAt(placeId: string, now: number): AirJudged {
      const known = kept.get(placeId);
      if (known && now >= known.at && now - known.at < freshMs) return known;
      const { places } = facts();
      const kind = places.get(placeId)?.kind;
      if (
        kind === 'outdoors' ||
        kind === 'wall' ||
        air.latest(placeId, 'air-temperature') === null
      ) {
        return { verdict: { airflow: 'cannot-tell', reasons: [] }, ...unknownChange };
      }
      const roomId = roomOf(placeId);
      const ofRoom =
        roomId === null
          ? unknownChange
          : roomId === placeId
            ? airChangeOf(roomId, now)
            : this.verdictAt(roomId, now);
      const { airChange, byGas } = ofRoom;
      const verdict = airVerdict(evidence(placeId, ofRoom, now));
      const made = { at: now, verdict, airChange, byGas };
      kept.set(placeId, made);
      return made;
    },
    /** The room that a place lies in or is; null for one outside any. */
    roomOf,
    /** Air changes of a room as they could be told at a moment; null without any evidence. */
    changeAt: (roomId: string, at: number): AirChange | null => airChangeOf(roomId, at).airChange,
    forget: (): void => kept.clear(),
  };
}
export type AirWatch = ReturnType<typeof airWatch>;
