import { isDeepStrictEqual } from 'node:util';
import { BoardcureError } from '../contract/problem.ts';
import type { Quantity } from '../contract/quantity.ts';
import { silences } from '../rules/counted-stays.ts';
import type { CalibrationFact, FaultFact, SensorFact } from '../rules/sensor-facts.ts';
import type { CalibrationTable } from './calibrations.ts';
import type { ChangeTable } from './changes.ts';
import type { ReadingCommitter } from './commit-readings.ts';
import type { HourTable } from './hours.ts';
import type { SensorFaultTable } from './sensor-faults.ts';
import type { SensorTable } from './sensors.ts';
import type { ReadingIntake } from './take-in-readings.ts';

export interface TrustTables {
  sensors: SensorTable;
  readings: ReadingIntake;
  hours: HourTable;
  calibrations: CalibrationTable;
  faults: SensorFaultTable;
  changes: ChangeTable;
}

/** A fault that is over. */
export interface EndedFault {
  id: string;
  untilAt: number;
}

type Edit = <A extends unknown[], R>(act: (...args: A) => R) => (...args: A) => R;

const curing: Quantity = 'air-temperature';

/**
 * What is recorded of how far sensors can be trusted: calibrations and faults. The hours that a
 * change touches are marked in its own transaction; the readings stay as they were sent.
 */
export function trustRecorder(tables: TrustTables, committer: ReadingCommitter, edit: Edit) {
  /** Marks the hours of every place that may have heard a sensor over a stretch. */
  function mark(sensorKey: number, fromAt: number | null, toAt: number | null): void {
    const extent = tables.readings.extent(sensorKey, curing);
    if (!extent) return;
    const from = Math.max(fromAt ?? extent.firstAt, extent.firstAt);
    const to = Math.max(from, Math.min(toAt ?? extent.lastAt, extent.lastAt));
    const touched = new Set(
      tables.sensors
        .stays()
        .filter((stay) => stay.sensorKey === sensorKey && stay.placeId !== null)
        .flatMap((stay) => committer.fedPlaces(stay.placeId as string)),
    );
    for (const placeId of touched) tables.hours.addDirty(placeId, from, to);
  }

  function calibrate(calibration: CalibrationFact, at: number): void {
    tables.calibrations.insert(calibration, at);
    if (calibration.quantity === curing) mark(calibration.sensorKey, calibration.fromAt, null);
  }

  function supersede(id: string, at: number): void {
    const before = tables.calibrations.standing().find((one) => one.id === id);
    if (!before || !tables.calibrations.supersede(id, at)) return;
    if (before.quantity === curing) mark(before.sensorKey, before.fromAt, null);
  }

  return {
    /** Records calibrations together; the same again changes nothing. */
    createCalibrations: edit((calibrations: CalibrationFact[], at: number) => {
      for (const calibration of calibrations) {
        const { id } = calibration;
        if (tables.calibrations.isKnown(id)) {
          const known = tables.calibrations.standing().find((one) => one.id === id);
          if (isDeepStrictEqual(known, calibration)) continue;
          throw new BoardcureError(
            'BC_ID_TAKEN',
            `The id ${id} already belongs to another calibration.`,
            { pointer: '/id' },
          );
        }
        calibrate(calibration, at);
        tables.changes.note(at, 'calibration', id, 'created');
      }
    }),
    /** Corrects a calibration; what it was is kept. */
    changeCalibration: edit((calibration: CalibrationFact, at: number) => {
      supersede(calibration.id, at);
      calibrate(calibration, at);
      tables.changes.note(at, 'calibration', calibration.id, 'changed');
    }),
    /** Withdraws a calibration; what it was is kept. */
    withdrawCalibration: edit((id: string, at: number) => {
      supersede(id, at);
      tables.changes.note(at, 'calibration', id, 'withdrawn');
    }),
    /** Records faults that began and faults that ended, and marks the hours they change. */
    changeFaults: edit((begun: FaultFact[], ended: EndedFault[], at: number) => {
      for (const fault of begun) {
        tables.faults.insert(fault, at);
        if (silences(fault, curing)) mark(fault.sensorKey, fault.fromAt, fault.untilAt);
      }
      for (const { id, untilAt } of ended) {
        const fault = tables.faults.byId(id);
        if (!fault) continue;
        tables.faults.end(id, untilAt);
        if (silences(fault, curing)) mark(fault.sensorKey, untilAt, null);
      }
    }),
    describeSensor: edit(
      (sensor: Pick<SensorFact, 'key' | 'id' | 'height' | 'species'>, at: number) => {
        tables.sensors.describe(sensor);
        tables.changes.note(at, 'sensor', sensor.id, 'described');
      },
    ),
  };
}
