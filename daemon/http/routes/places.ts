import type { FastifyInstance } from 'fastify';
import { placeReply } from '../../rules/fact-reply.ts';
import type { PlaceFact } from '../../rules/facts.ts';
import { checkWithin, named, referred } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function placeRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const withAir = (place: PlaceFact) => ({ ...placeReply(place), air: view.air(place.id, now()) });

  register(app, 'listPlaces', () => [...view.facts().places.values()].map(withAir));

  register(app, 'readPlace', ({ params }) =>
    withAir(named(view.facts().places, params.id, 'place')),
  );

  register(app, 'createPlace', async ({ body }) => {
    const within = body.within ?? null;
    checkWithin(
      body.kind,
      within === null ? null : referred(view.facts().places, within, 'place', '/within'),
    );
    const place: PlaceFact = {
      id: body.id ?? newId(),
      name: body.name,
      kind: body.kind,
      within,
      volumeM3: body.volumeM3 ?? null,
      facing: body.facing ?? null,
      exposure: body.exposure ?? null,
      capacityM: body.capacityM ?? null,
      capacityBoards: body.capacityBoards ?? null,
      createdAt: now(),
    };
    await edits.createPlace(place);
    return placeReply(named(view.facts().places, place.id, 'place'));
  });

  register(app, 'changePlace', async ({ params, body }) => {
    const known = named(view.facts().places, params.id, 'place');
    // A field that is left out stays; null says that it is not known any more.
    const or = <T>(given: T | undefined, before: T): T => (given === undefined ? before : given);
    await edits.changePlace(
      {
        ...known,
        name: or(body.name, known.name),
        volumeM3: or(body.volumeM3, known.volumeM3),
        facing: or(body.facing, known.facing),
        exposure: or(body.exposure, known.exposure),
        capacityM: or(body.capacityM, known.capacityM ?? null),
        capacityBoards: or(body.capacityBoards, known.capacityBoards ?? null),
      },
      now(),
    );
    return placeReply(named(view.facts().places, known.id, 'place'));
  });
}
