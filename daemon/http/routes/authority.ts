import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { HttpParts } from '../ports.ts';

/** `GET /authority.pem`: what nodes and browsers are to trust; it is no secret. */
export function authorityRoute(app: FastifyInstance, { authority }: HttpParts): void {
  app.get(
    '/authority.pem',
    { config: { role: 'anyone' }, schema: { hide: true } },
    async (_request, reply) => {
      const pem = authority?.() ?? null;
      if (pem === null) {
        throw new BoardcureError('BC_THING_UNKNOWN', 'No certificate was made by this daemon.');
      }
      return reply.type('application/x-pem-file').send(pem);
    },
  );
}
