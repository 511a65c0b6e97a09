import type { Reason } from '../contract/gate.ts';
import { cureStays } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import { localTime } from '../rules/local-time.ts';
import { airSources } from '../rules/place.ts';
import { isColdSeason, recoatWindow } from '../rules/recoat-window.ts';
import { type SolventQuestion, solventCautions } from '../rules/solvent-air.ts';
import { wallReasons } from '../rules/wall-sun.ts';
import type { AirChange } from '../science/airflow.ts';
import { plannedCoatOf, type SiteFacts } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';

export interface MindedParts {
  facts: () => SiteFacts;
  trade: TradeView;
  airChangeAt: (placeId: string, now: number) => AirChange | null;
  /** Exposure limit of the local rules, ppm; null for the lowest published one. */
  localLimitPpm(): number | null;
}

/** What is to be minded at a coat besides its cure: sun, weather and the solvent that leaves it. */
export function mindedOfCoats({ facts, trade, airChangeAt, localLimitPpm }: MindedParts) {
  const { timeZone } = trade.rules;

  /** What to mind at a wall when the next coat goes on. */
  function outdoorReasons(placeId: string, now: number): Reason[] {
    const place = facts().places.get(placeId);
    if (place?.kind !== 'wall') return [];
    return wallReasons(place, localTime(now, timeZone).minute / 60, trade.rules.hemisphere);
  }

  /** What to do first on a coat that has stood in the weather. */
  function standingReasons(fact: CoatFact, now: number): Reason[] {
    const { coats, moves, places } = facts();
    const stays = cureStays(
      fact,
      coats.get(fact.batchId) ?? [],
      moves.get(fact.batchId) ?? [],
      null,
    ).flatMap(({ placeId, fromAt, toAt }) => {
      const kind = places.get(placeId)?.kind;
      return kind ? [{ kind, fromAt, toAt: toAt ?? now }] : [];
    });
    return recoatWindow(stays, (at) => isColdSeason(at, timeZone, trade.rules.hemisphere));
  }

  function cautionsAbout(fact: CoatFact, placeId: string | null, now: number): Reason[] {
    const question = placeId === null ? null : solventQuestion(fact, placeId, now)?.question;
    return question ? solventCautions(question) : [];
  }

  /** What a coat’s solvent is about, and the room it leaves into; null where that is not known. */
  function solventQuestion(fact: CoatFact, placeId: string, now: number) {
    const { places } = facts();
    const planned = plannedCoatOf(facts(), fact);
    const areaM2 = trade.areaOf(fact);
    if (areaM2 === null || !planned) return null;
    const room = airSources(places, placeId)
      .map((id) => places.get(id))
      .find((place) => place?.kind === 'room');
    const airChange = room ? airChangeAt(room.id, now) : null;
    const question: SolventQuestion = {
      mixture: fact.mixture,
      mixedL: fact.usedL ?? areaM2 / planned.spreadingM2PerL,
      hoursSince: (now - fact.finishedAt) / hourMs,
      volumeM3: room?.volumeM3 ?? null,
      airChangesPerHour: airChange?.identifiable ? (airChange.low ?? null) : null,
      localLimitPpm: localLimitPpm(),
    };
    return { room: room ?? null, question };
  }

  return { outdoorReasons, standingReasons, cautionsAbout, solventQuestion };
}
