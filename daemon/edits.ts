import type { Edits } from './http/edits.ts';
import type { Monitor } from './monitor/monitor.ts';
import type { StoreThread } from './store/thread.ts';

/** Edits that are on disk and worked into every sum before their caller hears of it. */
export function siteEdits(
  store: StoreThread,
  monitor: Pick<Monitor, 'factsChanged'>,
  changed: (batchId: string | null) => void,
  mostPhotoBytes: number,
): Edits {
  const worked =
    <A extends unknown[]>(
      act: (...args: A) => Promise<unknown>,
      batchOf?: (...args: A) => string | null,
    ) =>
    async (...args: A): Promise<void> => {
      await act(...args);
      monitor.factsChanged();
      changed(batchOf ? batchOf(...args) : null);
    };
  return {
    createPlace: worked(store.createPlace),
    changePlace: worked(store.changePlace),
    createPlan: worked(store.createPlan),
    createBatch: worked(store.createBatch, (batch) => batch.id),
    changeBatch: worked(store.changeBatch, (batch) => batch.id),
    createMove: worked(store.createMove, (move) => move.batchId),
    createCoat: worked(store.createCoat, (coat) => coat.batchId),
    removeCoat: worked(
      (coat: { id: string; batchId: string }, at: number) => store.removeCoat(coat.id, at),
      (coat) => coat.batchId,
    ),
    createSplit: worked(store.createSplit, (split) => split.batchId),
    createMerge: worked(store.createMerge, (merge) => merge.batchId),
    tickMounting: worked(store.tickMounting),
    createTin: worked(store.createTin),
    changeTin: worked(store.changeTin),
    beginCoating: worked(store.beginCoating, (coating) => coating.batchId),
    tickCoating: worked(store.tickCoating),
    endCoating: worked(store.endCoating, (coating) => coating.batchId),
    createTest: worked(store.createTest, (test) => test.batchId),
    createRemark: worked(store.createRemark, (remark) => remark.batchId),
    createHandReading: worked(store.createHandReading, (reading) => reading.batchId),
    renameSensor: worked(store.renameSensor),
    placeSensor: worked(store.placeSensor),
    describeSensor: worked(store.describeSensor),
    createCalibrations: worked(store.createCalibrations),
    changeCalibration: worked(store.changeCalibration),
    withdrawCalibration: worked(store.withdrawCalibration),
    nameSite: worked(store.nameSite),
    seeNotice: worked(store.seeNotice),
    tickLockUp: worked(store.tickLockUp),
    addPhoto: worked(
      (photo, picture, at) => store.addPhoto(photo, picture, mostPhotoBytes, at),
      (photo) => photo.batchId,
    ),
    removePhoto: worked(store.removePhoto),
  };
}
