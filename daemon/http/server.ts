import helmet from '@fastify/helmet';
import { fastifySSE } from '@fastify/sse';
import files from '@fastify/static';
import swagger from '@fastify/swagger';
import Fastify, { type FastifyInstance } from 'fastify';
import {
  jsonSchemaTransform,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod';
import { guardRoutes } from './access-gate.ts';
import { metricsRoute } from './metrics.ts';
import type { HttpParts } from './ports.ts';
import { problemReply, sendProblem } from './problem-reply.ts';
import { accessRoutes } from './routes/access.ts';
import { authorityRoute } from './routes/authority.ts';
import { batchRoutes } from './routes/batches.ts';
import { brushRoutes } from './routes/brush.ts';
import { calibrationRoutes } from './routes/calibrations.ts';
import { coatingRoutes } from './routes/coatings.ts';
import { coatRoutes } from './routes/coats.ts';
import { comparisonRoutes } from './routes/comparisons.ts';
import { curveRoutes } from './routes/curves.ts';
import { entryRoutes } from './routes/entries.ts';
import { lineageRoutes } from './routes/lineage.ts';
import { mqttAccessRoutes } from './routes/mqtt-access.ts';
import { ownSiteRoutes } from './routes/own-site.ts';
import { placeRoutes } from './routes/places.ts';
import { planAheadRoutes } from './routes/plan-ahead.ts';
import { planRoutes } from './routes/plans.ts';
import { potRoutes } from './routes/pot.ts';
import { recordRoutes } from './routes/records.ts';
import { reportRoutes } from './routes/reports.ts';
import { sensorRoutes } from './routes/sensors.ts';
import { seriesRoutes } from './routes/series.ts';
import { settingRoutes } from './routes/settings.ts';
import { siteRoutes } from './routes/site.ts';
import { tinRoutes } from './routes/tins.ts';
import { topicRuleRoutes } from './routes/topic-rules.ts';
import { tradeRoutes } from './routes/trade.ts';
import { limitRequests, nodeTimes, serverTimes } from './server-limits.ts';
import { streamRoute } from './stream.ts';

const largestBody = 1_048_576;

/** Builds the server: API, stream and pages. It does not listen; tests inject requests. */
export async function buildServer(parts: HttpParts): Promise<FastifyInstance> {
  const replyToError = problemReply(parts.log);
  const times = nodeTimes(parts.limits);
  const app: FastifyInstance = Fastify({
    bodyLimit: largestBody,
    ...serverTimes(parts.limits),
    ...(parts.tls ? { https: { ...parts.tls.pair(), ...times } } : { http: times }),
    forceCloseConnections: true,
    trustProxy: false,
    frameworkErrors: (error, request, reply) => void replyToError(error, request, reply),
  });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  app.setErrorHandler(replyToError);
  app.setNotFoundHandler((request, reply) =>
    sendProblem(reply, 'BC_ROUTE_UNKNOWN', `There is nothing at ${request.method} ${request.url}.`),
  );
  await limitRequests(app, parts.limits);
  guardRoutes(app, parts);

  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        imgSrc: ["'self'", 'data:'],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
        formAction: ["'self'"],
      },
    },
    // Plain HTTP on a local network: a browser must not insist on TLS that is not there.
    strictTransportSecurity: false,
    crossOriginOpenerPolicy: false,
    originAgentCluster: false,
  });
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Boardcure',
        description: 'Cure of coated boards: places, sensors, batches, coats, tests and verdicts.',
        version: '1',
      },
    },
    transform: jsonSchemaTransform,
  });
  await app.register(fastifySSE);

  authorityRoute(app, parts);
  let endStreams = () => {};
  metricsRoute(app, parts);
  await app.register(async (api) => {
    siteRoutes(api, parts);
    ownSiteRoutes(api, parts);
    settingRoutes(api, parts);
    recordRoutes(api, parts);
    accessRoutes(api, parts);
    mqttAccessRoutes(api, parts);
    placeRoutes(api, parts);
    sensorRoutes(api, parts);
    topicRuleRoutes(api, parts);
    calibrationRoutes(api, parts);
    comparisonRoutes(api, parts);
    planRoutes(api, parts);
    batchRoutes(api, parts);
    coatRoutes(api, parts);
    entryRoutes(api, parts);
    brushRoutes(api, parts);
    potRoutes(api, parts);
    lineageRoutes(api, parts);
    tinRoutes(api, parts);
    coatingRoutes(api, parts);
    tradeRoutes(api, parts);
    seriesRoutes(api, parts);
    curveRoutes(api, parts);
    planAheadRoutes(api, parts);
    reportRoutes(api, parts);
    endStreams = streamRoute(api, parts);
    api.get('/api/v1/openapi.json', { schema: { hide: true }, config: { role: 'anyone' } }, () =>
      app.swagger(),
    );
  });
  if (parts.dashboardFolder !== null) {
    await app.register(files, {
      root: parts.dashboardFolder,
      maxAge: 0,
      setHeaders(reply, path) {
        // The name of an asset holds the hash of what is in it.
        if (!path.includes('/dashboard/assets/')) return;
        reply.header('cache-control', 'public, max-age=31536000, immutable');
      },
    });
  }
  app.addHook('preClose', async () => endStreams());
  return app;
}
