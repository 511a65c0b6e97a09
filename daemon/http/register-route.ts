import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Route } from '../contract/route.ts';
import { type RouteCall, type RouteName, type RouteReply, routes } from '../contract/routes.ts';
import { neededRole } from '../rules/role.ts';

export type Handler<N extends RouteName> = (
  call: RouteCall<N>,
  request: FastifyRequest,
  reply: FastifyReply,
) => RouteReply<N> | Promise<RouteReply<N>>;

/** Serves one route of the contract: checked on the way in, and on the way out. */
export function register<N extends RouteName>(
  app: FastifyInstance,
  name: N,
  handler: Handler<N>,
): void {
  const route: Route = routes[name];
  app.route({
    method: route.method,
    url: route.path,
    config: { role: neededRole(route) },
    schema: {
      summary: route.summary,
      operationId: name,
      ...(route.params ? { params: route.params } : {}),
      ...(route.query ? { querystring: route.query } : {}),
      ...(route.body ? { body: route.body } : {}),
      response: { [route.status]: route.reply },
    },
    handler: async (request, reply) => {
      const { params, query, body } = request;
      reply.code(route.status);
      return handler({ params, query, body } as RouteCall<N>, request, reply);
    },
  });
}
