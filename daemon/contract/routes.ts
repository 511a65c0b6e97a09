import { z } from 'zod';
import {
  Batch,
  BatchChange,
  BatchSummary,
  HandReading,
  Move,
  NewBatch,
  NewHandReading,
  NewMove,
  NewRemark,
  Remark,
} from './batch.ts';
import { Coat, NewCoat, NewTouchTest, TouchTest } from './coat.ts';
import { Health, Refused } from './health.ts';
import { MixtureQuery, MixtureReply } from './mixture.ts';
import { Id } from './moment.ts';
import { Notice, NoticeChange } from './notice.ts';
import { Overview } from './overview.ts';
import { NewPlace, Place, PlaceAir } from './place.ts';
import { NewPlan, Plan } from './plan.ts';
import { Sensor, SensorChange, SensorId } from './sensor.ts';
import { BatchChart, BatchChartQuery, Series, SeriesQuery } from './series.ts';

export type Method = 'GET' | 'POST' | 'PATCH' | 'DELETE';

/** One route as data: what it takes and what it answers. Server and dashboard both read this. */
export interface Route {
  readonly method: Method;
  readonly path: `/${string}`;
  readonly summary: string;
  readonly params?: z.ZodType;
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
  readonly status: 200 | 201;
  readonly reply: z.ZodType;
}

const ById = z.strictObject({ id: Id });
const OfBatch = z.strictObject({ id: Id, part: Id });

export const routes = {
  health: {
    method: 'GET',
    path: '/healthz',
    summary: 'Whether the daemon works, and if not, why',
    status: 200,
    reply: Health,
  },
  overview: {
    method: 'GET',
    path: '/api/v1/overview',
    summary: 'Every place with its air, its batches and their verdicts',
    status: 200,
    reply: Overview,
  },
  listPlaces: {
    method: 'GET',
    path: '/api/v1/places',
    summary: 'All places with the air there now',
    status: 200,
    reply: z.array(Place.extend({ air: PlaceAir })),
  },
  createPlace: {
    method: 'POST',
    path: '/api/v1/places',
    summary: 'Make a place',
    body: NewPlace,
    status: 201,
    reply: Place,
  },
  readPlace: {
    method: 'GET',
    path: '/api/v1/places/:id',
    summary: 'One place with the air there now',
    params: ById,
    status: 200,
    reply: Place.extend({ air: PlaceAir }),
  },
  listSensors: {
    method: 'GET',
    path: '/api/v1/sensors',
    summary: 'All sensors with their latest readings',
    status: 200,
    reply: z.array(Sensor),
  },
  readSensor: {
    method: 'GET',
    path: '/api/v1/sensors/:id',
    summary: 'One sensor with its latest readings',
    params: z.strictObject({ id: SensorId }),
    status: 200,
    reply: Sensor,
  },
  changeSensor: {
    method: 'PATCH',
    path: '/api/v1/sensors/:id',
    summary: 'Name a sensor, place it, move it or take it down',
    params: z.strictObject({ id: SensorId }),
    body: SensorChange,
    status: 200,
    reply: Sensor,
  },
  listPlans: {
    method: 'GET',
    path: '/api/v1/plans',
    summary: 'All coating plans',
    status: 200,
    reply: z.array(Plan),
  },
  createPlan: {
    method: 'POST',
    path: '/api/v1/plans',
    summary: 'Make a coating plan',
    body: NewPlan,
    status: 201,
    reply: Plan,
  },
  listBatches: {
    method: 'GET',
    path: '/api/v1/batches',
    summary: 'All batches',
    status: 200,
    reply: z.array(BatchSummary),
  },
  createBatch: {
    method: 'POST',
    path: '/api/v1/batches',
    summary: 'Start a batch',
    body: NewBatch,
    status: 201,
    reply: Batch,
  },
  readBatch: {
    method: 'GET',
    path: '/api/v1/batches/:id',
    summary: 'One batch: coats with exact sums, stages and verdicts, and all that was recorded',
    params: ById,
    status: 200,
    reply: Batch,
  },
  changeBatch: {
    method: 'PATCH',
    path: '/api/v1/batches/:id',
    summary: 'Rename a batch or close it',
    params: ById,
    body: BatchChange,
    status: 200,
    reply: Batch,
  },
  batchChart: {
    method: 'GET',
    path: '/api/v1/batches/:id/chart',
    summary: 'Temperature, humidity and degree-hours of the coat that cures',
    params: ById,
    query: BatchChartQuery,
    status: 200,
    reply: BatchChart,
  },
  listCoats: {
    method: 'GET',
    path: '/api/v1/batches/:id/coats',
    summary: 'The coats of a batch',
    params: ById,
    status: 200,
    reply: z.array(Coat),
  },
  createCoat: {
    method: 'POST',
    path: '/api/v1/batches/:id/coats',
    summary: 'Record a coat',
    params: ById,
    body: NewCoat,
    status: 201,
    reply: Coat,
  },
  removeCoat: {
    method: 'DELETE',
    path: '/api/v1/batches/:id/coats/:part',
    summary: 'Take back a coat that was recorded by mistake (it is kept, marked as taken back)',
    params: OfBatch,
    status: 200,
    reply: Batch,
  },
  listMoves: {
    method: 'GET',
    path: '/api/v1/batches/:id/moves',
    summary: 'Where a batch has lain',
    params: ById,
    status: 200,
    reply: z.array(Move),
  },
  createMove: {
    method: 'POST',
    path: '/api/v1/batches/:id/moves',
    summary: 'Record that a batch was moved',
    params: ById,
    body: NewMove,
    status: 201,
    reply: Move,
  },
  listTests: {
    method: 'GET',
    path: '/api/v1/batches/:id/tests',
    summary: 'The touch tests of a batch',
    params: ById,
    status: 200,
    reply: z.array(TouchTest),
  },
  createTest: {
    method: 'POST',
    path: '/api/v1/batches/:id/tests',
    summary: 'Record a touch test',
    params: ById,
    body: NewTouchTest,
    status: 201,
    reply: TouchTest,
  },
  listRemarks: {
    method: 'GET',
    path: '/api/v1/batches/:id/remarks',
    summary: 'What was seen on a batch',
    params: ById,
    status: 200,
    reply: z.array(Remark),
  },
  createRemark: {
    method: 'POST',
    path: '/api/v1/batches/:id/remarks',
    summary: 'Record what was seen',
    params: ById,
    body: NewRemark,
    status: 201,
    reply: Remark,
  },
  createReading: {
    method: 'POST',
    path: '/api/v1/readings',
    summary: 'Record what a hand meter showed',
    body: NewHandReading,
    status: 201,
    reply: HandReading,
  },
  listReadings: {
    method: 'GET',
    path: '/api/v1/readings',
    summary: 'What hand meters showed',
    status: 200,
    reply: z.array(HandReading),
  },
  series: {
    method: 'GET',
    path: '/api/v1/series',
    summary: 'The readings of one sensor and quantity as columns',
    query: SeriesQuery,
    status: 200,
    reply: Series,
  },
  listNotices: {
    method: 'GET',
    path: '/api/v1/notices',
    summary: 'What wants attention, and what did',
    status: 200,
    reply: z.array(Notice),
  },
  changeNotice: {
    method: 'PATCH',
    path: '/api/v1/notices/:id',
    summary: 'Mark a notice as seen',
    params: ById,
    body: NoticeChange,
    status: 200,
    reply: Notice,
  },
  listRefused: {
    method: 'GET',
    path: '/api/v1/refused',
    summary: 'The last messages that could not be taken as readings, with the reason',
    status: 200,
    reply: z.array(Refused),
  },
  mixture: {
    method: 'GET',
    path: '/api/v1/mixture',
    summary: 'How much of what goes into the pot',
    query: MixtureQuery,
    status: 200,
    reply: MixtureReply,
  },
} as const satisfies Record<string, Route>;

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
