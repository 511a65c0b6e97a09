import type { FastifyInstance } from 'fastify';
import type { Calibration, CalibrationHow } from '../../contract/calibration.ts';
import { toMoment } from '../../contract/moment.ts';
import { BoardcureError } from '../../contract/problem.ts';
import type { Quantity } from '../../contract/quantity.ts';
import { calibrationInForce } from '../../rules/calibration-in-force.ts';
import { checkPast } from '../../rules/record-check.ts';
import type { CalibrationFact, KeptCalibration } from '../../rules/sensor-facts.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';
import { sensorById } from '../sensor-by-id.ts';

/** Readings about the moment at which a hand meter was held beside a sensor, ms. Assumption. */
const besideMs = 15 * 60_000;
const mostBeside = 1000;

/** A calibration as the outside sees it. */
export function calibrationReply(
  { view, trust, now }: Pick<HttpParts, 'view' | 'trust' | 'now'>,
  kept: KeptCalibration,
): Calibration {
  const { calibrations, sensors } = view.facts();
  const standing = calibrationInForce(calibrations, kept.sensorKey, kept.quantity, now());
  return {
    id: kept.id,
    sensor: sensors.get(kept.sensorKey)?.id ?? '',
    quantity: kept.quantity,
    how: kept.how,
    from: toMoment(kept.fromAt),
    note: kept.note,
    ...trust.calibrationLine(kept.quantity, kept.how),
    inForce: kept.supersededAt === null && standing?.id === kept.id,
    recordedAt: toMoment(kept.recordedAt),
    replacedAt: toMoment(kept.supersededAt),
  };
}

export function calibrationRoutes(app: FastifyInstance, parts: HttpParts): void {
  const { view, edits, readings, trust, now, newId } = parts;

  const newestOf = (id: string) => view.calibrationHistory().findLast((one) => one.id === id);

  function reply(id: string): Calibration {
    const kept = newestOf(id);
    if (!kept) throw unknown(id);
    return calibrationReply(parts, kept);
  }

  function checked(fact: CalibrationFact): CalibrationFact {
    const fault = trust.calibrationFault(fact.quantity, fact.how);
    if (fault) throw new BoardcureError('BC_REQUEST_INVALID', fault.said, fault);
    if (fact.fromAt !== null) checkPast(fact.fromAt, now(), '/from');
    return fact;
  }

  /** What a sensor sent while a hand meter was held beside it, where nobody typed it. */
  function completed(sensorKey: number, quantity: Quantity, how: CalibrationHow): CalibrationHow {
    if (how.kind !== 'hand-meter' || how.shown !== undefined) return how;
    const at = how.measuredAt === undefined ? now() : Date.parse(how.measuredAt);
    checkPast(at, now(), '/how/measuredAt');
    const [from, to] = [at - besideMs, at + besideMs];
    const sent = readings.readingsBetween(sensorKey, quantity, from, to, mostBeside);
    const near =
      sent.length === 0 && quantity === 'wood-moisture'
        ? view.wood.moistureBetween(sensorKey, from, to, mostBeside)
        : sent;
    if (near.length === 0) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('sensor-said-nothing', { minutes: besideMs / 60_000, at }),
        { pointer: '/how/shown' },
      );
    }
    const shown = near.reduce((sum, one) => sum + one.raw, 0) / near.length;
    return { ...how, shown, measuredAt: toMoment(at) };
  }

  register(app, 'listCalibrations', ({ params }) => {
    const { key } = sensorById(view.facts().sensors, params.id);
    return view
      .calibrationHistory()
      .filter((one) => one.sensorKey === key)
      .map((one) => calibrationReply(parts, one));
  });

  register(app, 'createCalibration', async ({ params, body }) => {
    const { key } = sensorById(view.facts().sensors, params.id);
    const fact = checked({
      id: body.id ?? newId(),
      sensorKey: key,
      quantity: body.quantity,
      fromAt: body.from === undefined ? now() : momentOf(body.from),
      how: completed(key, body.quantity, body.how),
      note: body.note ?? null,
    });
    await edits.createCalibrations([fact], now());
    return reply(fact.id);
  });

  register(app, 'changeCalibration', async ({ params, body }) => {
    const known = view.facts().calibrations.find((one) => one.id === params.id);
    if (!known) throw newestOf(params.id) ? withdrawn(params.id) : unknown(params.id);
    const fact = checked({
      ...known,
      ...(body.from === undefined ? {} : { fromAt: momentOf(body.from) }),
      ...(body.note === undefined ? {} : { note: body.note }),
      how:
        body.how === undefined ? known.how : completed(known.sensorKey, known.quantity, body.how),
    });
    await edits.changeCalibration(fact, now());
    return reply(fact.id);
  });

  register(app, 'withdrawCalibration', async ({ params }) => {
    if (!newestOf(params.id)) throw unknown(params.id);
    await edits.withdrawCalibration(params.id, now());
    return reply(params.id);
  });
}

const momentOf = (moment: string | null) => (moment === null ? null : Date.parse(moment));

function unknown(id: string): BoardcureError {
  return new BoardcureError(
    'BC_THING_UNKNOWN',
    sentence('no-such-thing', { thing: 'calibration', id }),
  );
}

function withdrawn(id: string): BoardcureError {
  return new BoardcureError('BC_STATE_CONFLICT', sentence('calibration-withdrawn', { id }));
}
