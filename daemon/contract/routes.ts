import type { z } from 'zod';
import { accessRoutes } from './routes/access.ts';
import { batchRoutes } from './routes/batch.ts';
import { brushRoutes } from './routes/brush.ts';
import { calibrationRoutes } from './routes/calibration.ts';
import { coatRoutes } from './routes/coat.ts';
import { coatingRoutes } from './routes/coating.ts';
import { curveRoutes } from './routes/curves.ts';
import { lineageRoutes } from './routes/lineage.ts';
import { mqttAccessRoutes } from './routes/mqtt-access.ts';
import { noticeRoutes } from './routes/notice.ts';
import { ownSiteRoutes } from './routes/own-site.ts';
import { placeRoutes } from './routes/place.ts';
import { planRoutes } from './routes/plan.ts';
import { planAheadRoutes } from './routes/plan-ahead.ts';
import { readingRoutes } from './routes/reading.ts';
import { recordRoutes } from './routes/record.ts';
import { reportRoutes } from './routes/report.ts';
import { sensorRoutes } from './routes/sensor.ts';
import { settingRoutes } from './routes/setting.ts';
import { siteRoutes } from './routes/site.ts';
import { tinRoutes } from './routes/tin.ts';
import { topicRuleRoutes } from './routes/topic-rule.ts';
import { tradeRoutes } from './routes/trade.ts';

/** Every route, one file a subject. Server and dashboard both read this. */
export const routes = {
  ...siteRoutes,
  ...placeRoutes,
  ...sensorRoutes,
  ...topicRuleRoutes,
  ...calibrationRoutes,
  ...planRoutes,
  ...batchRoutes,
  ...coatRoutes,
  ...readingRoutes,
  ...noticeRoutes,
  ...accessRoutes,
  ...brushRoutes,
  ...planAheadRoutes,
  ...reportRoutes,
  ...mqttAccessRoutes,
  ...lineageRoutes,
  ...tinRoutes,
  ...coatingRoutes,
  ...tradeRoutes,
  ...ownSiteRoutes,
  ...recordRoutes,
  ...settingRoutes,
  ...curveRoutes,
} as const;

export type Routes = typeof routes;
export type RouteName = keyof Routes;

type Part<R, K extends string> = R extends Record<K, z.ZodType> ? z.output<R[K]> : undefined;
type PartIn<R, K extends string> = R extends Record<K, z.ZodType> ? z.input<R[K]> : undefined;

/** What a handler of the route receives, and what it must answer. */
export interface RouteCall<N extends RouteName> {
  params: Part<Routes[N], 'params'>;
  query: Part<Routes[N], 'query'>;
  body: Part<Routes[N], 'body'>;
}
export type RouteReply<N extends RouteName> = z.output<Routes[N]['reply']>;

/** What a caller of the route may send. */
export interface RouteSend<N extends RouteName> {
  params: PartIn<Routes[N], 'params'>;
  query: PartIn<Routes[N], 'query'>;
  body: PartIn<Routes[N], 'body'>;
}
