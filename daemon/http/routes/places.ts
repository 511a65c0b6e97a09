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
}
