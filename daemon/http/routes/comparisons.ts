import type { FastifyInstance } from 'fastify';
import type {
  AcceptedComparison,
  ComparedQuantity,
  Comparison,
} from '../../contract/comparison.ts';
import { toMoment } from '../../contract/moment.ts';
import { BoardcureError } from '../../contract/problem.ts';
import { calibrationInForce } from '../../rules/calibration-in-force.ts';
import { checkPast } from '../../rules/record-check.ts';
import type { SensorFact } from '../../rules/sensor-facts.ts';
import { sentence } from '../../wording/english.ts';
import { told } from '../../wording/sentence.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';
import { sensorById } from '../sensor-by-id.ts';
import { calibrationReply } from './calibrations.ts';

/** The longest time that is compared, h: a weekend. */
const longestHours = 72;
const hourMs = 3_600_000;
/** Readings looked up of one sensor and quantity: a weekend at one in five seconds. */
const mostReadings = 60_000;

/** Sensors in one closed box over night: which is the odd one out, and what would bring it back. */
export function comparisonRoutes(app: FastifyInstance, parts: HttpParts): void {
  const { view, edits, readings, trust, now, newId, voice } = parts;

  type Asked = Pick<AcceptedComparison, 'sensors' | 'from' | 'to'>;

  function spanOf(asked: Asked): { fromAt: number; toAt: number } {
    const fromAt = Date.parse(asked.from);
    const toAt = asked.to === undefined ? now() : Date.parse(asked.to);
    checkPast(toAt, now(), '/to');
    if (toAt <= fromAt) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('end-before-start', {}), {
        pointer: '/to',
      });
    }
    if (toAt - fromAt > longestHours * hourMs) {
      throw new BoardcureError(
        'BC_REQUEST_INVALID',
        sentence('comparison-too-long', { hours: longestHours }),
        { pointer: '/from' },
      );
    }
    return { fromAt, toAt };
  }

  function compare(asked: Asked): Comparison & { toAt: number } {
    const { fromAt, toAt } = spanOf(asked);
    const sensors = [...new Set(asked.sensors)].map((id, i) =>
      sensorById(view.facts().sensors, id, `/sensors/${i}`),
    );
    if (sensors.length < 2) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('two-sensors-at-least', {}), {
        pointer: '/sensors',
      });
    }
    const quantities = trust.boxQuantities.flatMap((quantity): ComparedQuantity[] => {
      const box = sensors.map(({ key, id }) => ({
        sensor: id,
        points: readings
          .readingsBetween(key, quantity, fromAt, toAt, mostReadings)
          .map((reading) => ({ at: reading.at, value: readings.corrected(reading) })),
      }));
      // A quantity that hardly any of them measures is no part of the comparison.
      if (box.filter(({ points }) => points.length > 0).length < 2) return [];
      return [
        trust.compareInBox(
          quantity,
          box.filter(({ points }) => points.length > 0),
        ),
      ];
    });
    return {
      from: toMoment(fromAt),
      to: toMoment(toAt),
      toAt,
      quantities,
      offers: quantities.flatMap((one) => offersOf(one, sensors, toAt)),
    };
  }

  function offersOf(
    { quantity, refused, sensors }: ComparedQuantity,
    known: readonly SensorFact[],
    toAt: number,
  ): Comparison['offers'] {
    if (refused !== null) return [];
    return sensors.flatMap(({ sensor, difference, uncertainty, wanders }) => {
      // What cannot be told from nothing is not corrected.
      if (wanders || Math.abs(difference) <= uncertainty) return [];
      const key = known.find(({ id }) => id === sensor)?.key;
      if (key === undefined) return [];
      const { calibrations } = view.facts();
      const before = calibrationInForce(calibrations, key, quantity, toAt)?.how ?? null;
      const how = trust.shifted(quantity, before, -difference);
      if (trust.calibrationFault(quantity, how)) return [];
      return [{ sensor, quantity, change: -difference, how }];
    });
  }

  register(app, 'compareSensors', ({ query }) =>
    compare({ ...query, sensors: query.sensors.split(',') }),
  );

  register(app, 'acceptComparison', async ({ body }) => {
    const { offers, toAt, from, to } = compare(body);
    const taken = offers.filter(({ sensor }) => !body.leaveOut?.includes(sensor));
    if (taken.length === 0) {
      throw new BoardcureError('BC_STATE_CONFLICT', sentence('no-offsets-offered', {}));
    }
    const holdsFrom = body.holdsFrom;
    const fromAt =
      holdsFrom === undefined ? toAt : holdsFrom === null ? null : Date.parse(holdsFrom);
    if (fromAt !== null) checkPast(fromAt, now(), '/holdsFrom');
    const others = body.sensors.length - 1;
    const note = voice(told('compared-with', { others, from, to }));
    const facts = taken.map(({ sensor, quantity, how }) => ({
      id: newId(),
      sensorKey: sensorById(view.facts().sensors, sensor).key,
      quantity,
      fromAt,
      how,
      note,
    }));
    await edits.createCalibrations(facts, now());
    const ids = new Set(facts.map(({ id }) => id));
    return view
      .calibrationHistory()
      .filter(({ id }) => ids.has(id))
      .map((kept) => calibrationReply(parts, kept));
  });
}
