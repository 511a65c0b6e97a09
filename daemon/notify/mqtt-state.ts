import type { Batch } from '../contract/batch.ts';
import { toMoment } from '../contract/moment.ts';
import type { PlaceAir } from '../contract/place.ts';
import type { BatchFact, PlaceFact } from '../rules/facts.ts';

/** Version of the retained payloads. */
const schema = 1;
/** States are published at most this often; what changes in between is published once. */
const gatherMs = 1000;

interface StateParts {
  site: string;
  view: {
    facts(): { batches: ReadonlyMap<string, BatchFact>; places: ReadonlyMap<string, PlaceFact> };
    air(placeId: string, now: number): PlaceAir;
    assess: { batch(batch: BatchFact, now: number): Batch };
  };
  port: { publish(topic: string, payload: string, options: { retain: boolean }): void };
  now: () => number;
  failed: (cause: unknown) => void;
}

/** Publishes the state of the site, retained: `status`, `batch/<id>` and `place/<id>`. */
export function statePublisher({ site, view, port, now, failed }: StateParts) {
  const topic = (rest: string) => `boardcure/${site}/${rest}`;
  const published = new Map<string, string>();
  let gathering: NodeJS.Timeout | null = null;

  function publish(rest: string, state: object): void {
    const payload = JSON.stringify({ schema, ...state });
    if (published.get(rest) === payload) return;
    published.set(rest, payload);
    port.publish(topic(rest), payload, { retain: true });
  }

  /** Takes a retained state back, also one that an earlier run left at the broker. */
  function withdraw(rest: string): void {
    if (published.get(rest) === '') return;
    published.set(rest, '');
    port.publish(topic(rest), '', { retain: true });
  }

  function publishAll(): void {
    gathering = null;
    const at = now();
    const { batches, places } = view.facts();
    for (const place of places.values()) {
      const air = view.air(place.id, at);
      publish(`place/${place.id}`, { name: place.name, kind: place.kind, air });
    }
    for (const fact of batches.values()) {
      if (fact.closedAt !== null) {
        withdraw(`batch/${fact.id}`);
        continue;
      }
      const batch = view.assess.batch(fact, at);
      const coat = batch.coats.at(-1);
      publish(`batch/${fact.id}`, {
        name: batch.name,
        placeId: batch.placeId,
        coat: coat
          ? {
              coat: coat.coat,
              finishedAt: coat.finishedAt,
              degreeHours: Math.round(coat.degreeHours * 10) / 10,
              stage: coat.stage,
              gates: Object.fromEntries(
                Object.entries(coat.gates).map(([gate, { verdict, probability }]) => [
                  gate,
                  { verdict, probability: Math.round(probability * 100) / 100 },
                ]),
              ),
            }
          : null,
      });
    }
  }

  publish('status', { status: 'online', since: toMoment(now()) });
  return {
    changed(): void {
      gathering ??= setTimeout(() => {
        try {
          publishAll();
        } catch (cause) {
          failed(cause);
        }
      }, gatherMs);
    },
    close(): void {
      if (gathering) clearTimeout(gathering);
      publish('status', { status: 'offline' });
    },
  };
}
