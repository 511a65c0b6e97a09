import type { Species } from '../contract/batch.ts';
import type { CalibrationHow } from '../contract/calibration.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { SensorHeight } from '../contract/sensor.ts';
import type { FaultKind } from '../contract/sensor-fault.ts';
import type { Told } from '../contract/sentence.ts';

/*
 * Sensors, where they hang and how far they are believed, as plain data. Every `at` is UTC epoch
 * milliseconds; null means unknown.
 */

export interface SensorFact {
  key: number;
  id: string;
  name: string | null;
  firstSeenAt: number;
  /** Where in its place it hangs; null while nobody has said. */
  height: SensorHeight | null;
  /** Timber a wood probe sits in, where that is not told by the batch at its place. */
  species: Species | null;
}

/** A calibration holds from a moment on (null: from ever) until the next of its quantity. */
export interface CalibrationFact {
  id: string;
  sensorKey: number;
  quantity: Quantity;
  fromAt: number | null;
  how: CalibrationHow;
  note: string | null;
}

/** A calibration as it was at some time, also one that was corrected or withdrawn since. */
export interface KeptCalibration extends CalibrationFact {
  recordedAt: number;
  /** When it was corrected or withdrawn; null while it stands. */
  supersededAt: number | null;
}

/** A fault that was found in what a sensor sent. */
export interface FaultFact {
  id: string;
  sensorKey: number;
  /** What it is about; null when it is about all that the sensor sends. */
  quantity: Quantity | null;
  kind: FaultKind;
  fromAt: number;
  /** From when on the sensor is believed again; null while it is not. */
  untilAt: number | null;
  /** What was seen, as a sentence; what it tells, where that was kept. */
  says: string;
  told?: Told | null;
}

/** A sensor sits at a place from a moment on (null: from ever) until its next stay. */
export interface SensorStay {
  sensorKey: number;
  /** null: taken down. */
  placeId: string | null;
  fromAt: number | null;
}
