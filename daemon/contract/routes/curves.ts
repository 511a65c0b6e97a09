import {
  AirChanges,
  AirChangesQuery,
  BatchCurves,
  BatchCurvesQuery,
  Curves,
  CurvesQuery,
  OfSensor,
} from '../curves.ts';
import type { Route } from '../route.ts';
import { ById } from './params.ts';

export const curveRoutes = {
  placeCurves: {
    method: 'GET',
    path: '/api/v1/places/:id/curves',
    summary: 'The air at a place as curves on one grid, with what happened there',
    params: ById,
    query: CurvesQuery,
    status: 200,
    reply: Curves,
  },
  sensorCurves: {
    method: 'GET',
    path: '/api/v1/sensors/:id/curves',
    summary: 'What one sensor measured as curves on one grid',
    params: OfSensor,
    query: CurvesQuery,
    status: 200,
    reply: Curves,
  },
  batchCurves: {
    method: 'GET',
    path: '/api/v1/batches/:id/curves',
    summary: 'The air over a coat and the sum it gathered, with what is to come',
    params: ById,
    query: BatchCurvesQuery,
    status: 200,
    reply: BatchCurves,
  },
  airChanges: {
    method: 'GET',
    path: '/api/v1/places/:id/air-changes',
    summary: 'How often the air of a place’s room was changed, estimated over time',
    params: ById,
    query: AirChangesQuery,
    status: 200,
    reply: AirChanges,
  },
} as const satisfies Record<string, Route>;
