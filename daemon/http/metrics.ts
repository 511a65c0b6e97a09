import type { FastifyInstance } from 'fastify';
import type { HttpParts } from './ports.ts';

/** `GET /metrics`: figures for a collector, as OpenMetrics text; nothing where none are kept. */
export function metricsRoute(app: FastifyInstance, { metrics }: HttpParts): void {
  if (!metrics) return;
  app.addHook('onResponse', async (_request, reply) => metrics.responded(reply.statusCode));
  app.get(
    '/metrics',
    { schema: { operationId: 'metrics', summary: 'Figures for a collector, as OpenMetrics text' } },
    async (_request, reply) => {
      reply.header('content-type', metrics.contentType);
      return reply.send(await metrics.text());
    },
  );
}
