import type { AirChanges } from '../contract/curves.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { AirChange } from '../science/airflow.ts';
import type { AirWatch } from './air-watch.ts';

/** Estimates that one request may ask for: each fits the balance of a day. */
const mostEstimates = 40;
/** Estimates that are kept for the next request. */
const mostKept = 1_000;
const stepsHours = [1, 2, 3, 6, 12, 24, 48, 96, 192];

interface ChangesParts {
  airing: Pick<AirWatch, 'roomOf' | 'changeAt'>;
  /** Lets others have their turn between two estimates. */
  breathe: () => Promise<void>;
}

/**
 * Air changes of a room over time. Nobody keeps them: they are estimated when they are asked for, at
 * whole multiples of a coarse step, and kept while no reading of the past changes.
 */
export function airChangeHistory({ airing, breathe }: ChangesParts) {
  const kept = new Map<string, AirChange | null>();

  function changeAt(roomId: string, at: number, isPast: boolean): AirChange | null {
    const key = `${roomId} ${at}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const change = airing.changeAt(roomId, at);
    if (isPast) {
      const oldest = kept.keys().next().value;
      if (kept.size >= mostKept && oldest !== undefined) kept.delete(oldest);
      kept.set(key, change);
    }
    return change;
  }

  return {
    /** @param now - nothing is estimated for a later time */
    async between(placeId: string, from: number, to: number, now: number): Promise<AirChanges> {
      const roomId = airing.roomOf(placeId);
      const changes: AirChanges = { roomId, at: [], perHour: [], low: [], high: [] };
      if (roomId === null) return changes;
      const hours = (Math.min(to, now) - from) / hourMs;
      const stepMs = (stepsHours.find((step) => hours / step <= mostEstimates) ?? 384) * hourMs;
      const first = Math.ceil(from / stepMs) * stepMs;
      for (let i = 0; i < mostEstimates; i++) {
        const at = first + i * stepMs;
        if (at > Math.min(to, now)) break;
        const change = changeAt(roomId, at, at < now - hourMs);
        const isKnown = change?.identifiable === true;
        changes.at.push(at / 1000);
        changes.perHour.push(isKnown ? (change.perHour ?? null) : null);
        changes.low.push(isKnown ? (change.low ?? null) : null);
        changes.high.push(isKnown ? (change.high ?? null) : null);
        await breathe();
      }
      return changes;
    },
    /** Called when readings of the past, their places or their corrections changed. */
    forget: (): void => kept.clear(),
  };
}
