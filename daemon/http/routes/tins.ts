import type { FastifyInstance } from 'fastify';
import { checkPast, named } from '../../rules/record-check.ts';
import type { TinFact } from '../../rules/trade-facts.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function tinRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const tinOf = (id: string) => named(view.facts().tins, id, 'tin');
  const openedAt = (text: string | null | undefined): number | null => {
    if (text === null || text === undefined) return null;
    const at = Date.parse(text);
    checkPast(at, now(), '/openedAt');
    return at;
  };

  register(app, 'listTins', () =>
    [...view.facts().tins.values()].map((tin) => view.trade.tin(tin, now())),
  );

  register(app, 'createTin', async ({ body }) => {
    const tin: TinFact = {
      id: body.id ?? newId(),
      name: body.name,
      kind: body.kind ?? 'paint',
      colour: body.colour ?? null,
      volumeL: body.volumeL ?? null,
      driers: body.driers ?? 'unknown',
      openedAt: openedAt(body.openedAt),
      emptiedAt: null,
      createdAt: now(),
    };
    await edits.createTin(tin);
    return view.trade.tin(tinOf(tin.id), now());
  });

  register(app, 'changeTin', async ({ params, body }) => {
    const tin = tinOf(params.id);
    const emptiedAt = body.empty ? (tin.emptiedAt ?? now()) : null;
    await edits.changeTin(
      {
        ...tin,
        name: body.name ?? tin.name,
        colour: body.colour === undefined ? tin.colour : body.colour,
        volumeL: body.volumeL === undefined ? tin.volumeL : body.volumeL,
        driers: body.driers ?? tin.driers,
        openedAt: body.openedAt === undefined ? tin.openedAt : openedAt(body.openedAt),
        emptiedAt: body.empty === undefined ? tin.emptiedAt : emptiedAt,
      },
      now(),
    );
    return view.trade.tin(tinOf(tin.id), now());
  });
}
