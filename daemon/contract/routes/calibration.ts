import { z } from 'zod';
import { Calibration, CalibrationChange, NewCalibration } from '../calibration.ts';
import { AcceptedComparison, Comparison, ComparisonQuery } from '../comparison.ts';
import type { Route } from '../route.ts';
import { SensorId } from '../sensor.ts';
import { ById } from './params.ts';

const OfSensor = z.strictObject({ id: SensorId });

export const calibrationRoutes = {
  listCalibrations: {
    method: 'GET',
    path: '/api/v1/sensors/:id/calibrations',
    summary: 'The calibrations of a sensor, with what was corrected or withdrawn since',
    params: OfSensor,
    status: 200,
    reply: z.array(Calibration),
  },
  createCalibration: {
    method: 'POST',
    path: '/api/v1/sensors/:id/calibrations',
    summary: 'Calibrate a sensor from a moment on; raw readings stay as they are',
    params: OfSensor,
    body: NewCalibration,
    status: 201,
    reply: Calibration,
  },
  changeCalibration: {
    method: 'PATCH',
    path: '/api/v1/calibrations/:id',
    summary: 'Correct a calibration; what it was is kept, and all sums follow',
    params: ById,
    body: CalibrationChange,
    status: 200,
    reply: Calibration,
  },
  withdrawCalibration: {
    method: 'DELETE',
    path: '/api/v1/calibrations/:id',
    summary: 'Withdraw a calibration (it is kept, marked as withdrawn)',
    params: ById,
    status: 200,
    reply: Calibration,
  },
  compareSensors: {
    method: 'GET',
    path: '/api/v1/comparisons',
    summary: 'Compare sensors that lay together in one closed box',
    query: ComparisonQuery,
    status: 200,
    reply: Comparison,
  },
  acceptComparison: {
    method: 'POST',
    path: '/api/v1/comparisons',
    summary: 'Take the offsets that a comparison offers',
    body: AcceptedComparison,
    status: 201,
    reply: z.array(Calibration),
  },
} as const satisfies Record<string, Route>;
