import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import { quantities } from '../../contract/quantity.ts';
import { sentence } from '../../wording/english.ts';
import type { HeardSensor } from '../mqtt-access-port.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Names and passwords at the embedded broker, and the way to closing it. */
export function mqttAccessRoutes(app: FastifyInstance, parts: HttpParts): void {
  const { mqttAccess, view, readings } = parts;

  function heard(): HeardSensor[] {
    return [...view.facts().sensors.values()].map(({ key, id, name }) => {
      const newest = quantities
        .map((quantity) => readings.newestReading(key, quantity)?.at ?? Number.NEGATIVE_INFINITY)
        .reduce((a, b) => Math.max(a, b));
      return { id, name, latestAt: Number.isFinite(newest) ? newest : null };
    });
  }
  const state = () => mqttAccess.state(heard());
  function orUnknown(found: boolean, name: string): void {
    if (found) return;
    throw new BoardcureError('BC_THING_UNKNOWN', sentence('no-broker-name', { name }));
  }

  register(app, 'readMqttAccess', state);

  register(app, 'changeMqttMode', async ({ body }) => {
    const { broker } = state();
    if (broker === 'external' && body.mode !== 'open') {
      throw new BoardcureError('BC_STATE_CONFLICT', sentence('broker-elsewhere', {}));
    }
    await mqttAccess.setMode(body.mode, heard(), body);
    return state();
  });

  register(app, 'createMqttLogin', ({ body }) =>
    mqttAccess.make(body.name, body.kind, body.sensors),
  );

  register(app, 'changeMqttLogin', async ({ params, body }) => {
    orUnknown(await mqttAccess.assign(params.id, body.sensors), params.id);
    return state();
  });

  register(app, 'removeMqttLogin', async ({ params }) => {
    orUnknown(await mqttAccess.remove(params.id), params.id);
    return state();
  });
}
