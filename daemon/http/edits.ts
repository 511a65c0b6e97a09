import type {
  BatchFact,
  CoatFact,
  HandReadingFact,
  LockUpTickFact,
  MoveFact,
  NewNoticeFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
  TouchTestFact,
} from '../rules/facts.ts';
import type { PhotoFact } from '../rules/photo.ts';
import type { CalibrationFact, SensorFact, SensorStay } from '../rules/sensor-facts.ts';
import type {
  CoatingFact,
  CoatingStepFact,
  MergeFact,
  MountingTickFact,
  SplitFact,
  TinFact,
} from '../rules/trade-facts.ts';
/** What people may record; each settles when it is on disk and worked in. */
export interface Edits {
  createPlace(place: PlaceFact): Promise<void>;
  changePlace(place: PlaceFact, at: number): Promise<void>;
  createPlan(plan: PlanFact): Promise<void>;
  createBatch(batch: BatchFact, firstMove: MoveFact): Promise<void>;
  /** What is left out stays as it was. */
  changeBatch(
    batch: Pick<BatchFact, 'id' | 'name' | 'closedAt'> &
      Partial<Pick<BatchFact, 'planId' | 'timber'>>,
    at: number,
  ): Promise<void>;
  createMove(move: MoveFact, recordedAt: number): Promise<void>;
  /** @param caution - raised with the coat if it is new; null for none */
  createCoat(coat: CoatFact, recordedAt: number, caution: NewNoticeFact | null): Promise<void>;
  removeCoat(coat: Pick<CoatFact, 'id' | 'batchId'>, at: number): Promise<void>;
  createSplit(
    split: SplitFact,
    child: BatchFact,
    move: MoveFact | null,
    recordedAt: number,
  ): Promise<void>;
  createMerge(merge: MergeFact, recordedAt: number): Promise<void>;
  tickMounting(tick: MountingTickFact, done: boolean, recordedAt: number): Promise<void>;
  createTin(tin: TinFact): Promise<void>;
  changeTin(tin: TinFact, at: number): Promise<void>;
  beginCoating(coating: CoatingFact, recordedAt: number): Promise<void>;
  tickCoating(step: CoatingStepFact, done: boolean, recordedAt: number): Promise<void>;
  /** @param coat - that it became; null when it was given up */
  endCoating(
    coating: CoatingFact,
    coat: CoatFact | null,
    recordedAt: number,
    caution: NewNoticeFact | null,
  ): Promise<void>;
  createTest(test: TouchTestFact, recordedAt: number): Promise<void>;
  createRemark(remark: RemarkFact, recordedAt: number): Promise<void>;
  createHandReading(reading: HandReadingFact, recordedAt: number): Promise<void>;
  renameSensor(key: number, id: string, name: string | null, at: number): Promise<void>;
  placeSensor(stay: SensorStay, id: string, at: number): Promise<void>;
  describeSensor(
    sensor: Pick<SensorFact, 'key' | 'id' | 'height' | 'species'>,
    at: number,
  ): Promise<void>;
  createCalibrations(calibrations: CalibrationFact[], at: number): Promise<void>;
  changeCalibration(calibration: CalibrationFact, at: number): Promise<void>;
  withdrawCalibration(id: string, at: number): Promise<void>;
  /** @param name - on the pages; null for that of the topics */
  nameSite(name: string | null, at: number): Promise<void>;
  seeNotice(id: string, at: number): Promise<void>;
  tickLockUp(tick: LockUpTickFact, recordedAt: number): Promise<void>;
  addPhoto(photo: Omit<PhotoFact, 'bytes'>, picture: Uint8Array, at: number): Promise<void>;
  removePhoto(id: string, at: number): Promise<void>;
}
