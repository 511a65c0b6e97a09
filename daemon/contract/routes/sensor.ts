import { z } from 'zod';
import type { Route } from '../route.ts';
import { Sensor, SensorChange, SensorId } from '../sensor.ts';

export const sensorRoutes = {
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
} as const satisfies Record<string, Route>;
