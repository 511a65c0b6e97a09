import type { FastifyInstance } from 'fastify';
import { toMoment } from '../../contract/moment.ts';
import { BoardcureError } from '../../contract/problem.ts';
import { quantities } from '../../contract/quantity.ts';
import type { Sensor } from '../../contract/sensor.ts';
import { faultReply } from '../../rules/fault/fault-words.ts';
import { stayAt } from '../../rules/place.ts';
import { checkPast, referred } from '../../rules/record-check.ts';
import type { SensorFact } from '../../rules/sensor-facts.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';
import { sensorById } from '../sensor-by-id.ts';

export function sensorRoutes(
  app: FastifyInstance,
  { view, edits, readings, now }: HttpParts,
): void {
  function reply(sensor: SensorFact): Sensor {
    const stay = stayAt(view.facts().stays.get(sensor.key) ?? [], now());
    return {
      id: sensor.id,
      name: sensor.name,
      placeId: stay?.placeId ?? null,
      height: sensor.height,
      species: sensor.species,
      firstSeenAt: toMoment(sensor.firstSeenAt),
      latest: quantities.flatMap((quantity) => {
        const newest = readings.newestReading(sensor.key, quantity);
        if (!newest) return [];
        const value = readings.corrected(newest);
        return [{ quantity, at: toMoment(newest.at), value, raw: newest.raw }];
      }),
      faults: view
        .facts()
        .faults.filter((fault) => fault.sensorKey === sensor.key && fault.untilAt === null)
        .map(faultReply),
      wood: view.wood.probe(sensor.key, now()),
    };
  }

  const sensorOf = (id: string) => sensorById(view.facts().sensors, id);

  register(app, 'listSensors', () => [...view.facts().sensors.values()].map(reply));

  register(app, 'readSensor', ({ params }) => reply(sensorOf(params.id)));

  register(app, 'changeSensor', async ({ params, body }) => {
    const sensor = sensorOf(params.id);
    const at = now();
    if (body.from !== undefined && body.placeId === undefined) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('from-needs-place', {}), {
        pointer: '/from',
      });
    }
    if (body.placeId) referred(view.facts().places, body.placeId, 'place', '/placeId');
    const from = body.from === undefined ? null : Date.parse(body.from);
    if (from !== null) checkPast(from, at, '/from');
    if (body.height !== undefined || body.species !== undefined) {
      const { key, id } = sensor;
      const { height = sensor.height, species = sensor.species } = body;
      await edits.describeSensor({ key, id, height, species }, at);
    }
    if (body.name !== undefined) await edits.renameSensor(sensor.key, sensor.id, body.name, at);
    if (body.placeId !== undefined) {
      const before = view.facts().stays.get(sensor.key) ?? [];
      const isFirst = before.every((stay) => stay.placeId === null);
      const stays = stayAt(before, at)?.placeId === body.placeId && from === null;
      if (!stays && !(isFirst && body.placeId === null)) {
        const fromAt = from ?? (isFirst ? null : at);
        await edits.placeSensor(
          { sensorKey: sensor.key, placeId: body.placeId, fromAt },
          sensor.id,
          at,
        );
      }
    }
    return reply(sensorOf(params.id));
  });
}
