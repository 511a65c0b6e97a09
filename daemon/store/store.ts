import type { Database } from 'better-sqlite3';
import type { OutdoorForecastPoint, ReadingGroup } from '../rules/facts.ts';
import type { HourBlock } from '../rules/hour-facts.ts';
import { noPosting, type PostingPlan } from '../rules/outgoing.ts';
import { batchTable } from './batches.ts';
import { calibrationTable } from './calibrations.ts';
import { changeTable } from './changes.ts';
import { coatingTable } from './coatings.ts';
import { coatTable } from './coats.ts';
import { type Committed, readingCommitter } from './commit-readings.ts';
import { hourExtremes } from './hour-extremes.ts';
import { hourTable } from './hours.ts';
import { lapsedOutlines } from './lapsed-outlines.ts';
import { lettingGo } from './let-go.ts';
import { lineageTable } from './lineage.ts';
import { lockUpTable } from './lock-up.ts';
import { noticeTable } from './notices.ts';
import { openMessageTable } from './open-messages.ts';
import { forecastTable } from './outdoor-forecast.ts';
import { messageKeeper, outgoingTable } from './outgoing.ts';
import { hourPacker } from './pack-hours.ts';
import { pendingTable } from './pending-readings.ts';
import { photoTable } from './photos.ts';
import { placeTable } from './places.ts';
import { planTable } from './plans.ts';
import { readingOutlines } from './reading-outline.ts';
import { readingTable } from './readings.ts';
import { editIn, factRecorder } from './record-facts.ts';
import { photoRecorder } from './record-photos.ts';
import { topicRuleRecorder } from './record-topic-rules.ts';
import { trustRecorder } from './record-trust.ts';
import { refusedTable } from './refused.ts';
import { remarkTable } from './remarks.ts';
import { sensorFaultTable } from './sensor-faults.ts';
import { sensorTable } from './sensors.ts';
import { siteNameTable } from './site-name.ts';
import { readingIntake } from './take-in-readings.ts';
import { tinTable } from './tins.ts';
import { topicRuleTable } from './topic-rules.ts';

function tablesOf(db: Database, posting: PostingPlan) {
  const outgoing = outgoingTable(db);
  return {
    places: placeTable(db),
    sensors: sensorTable(db),
    readings: readingTable(db),
    hours: hourTable(db),
    refused: refusedTable(db),
    openMessages: openMessageTable(db),
    plans: planTable(db),
    batches: batchTable(db),
    coats: coatTable(db),
    remarks: remarkTable(db),
    notices: noticeTable(db, outgoing, posting),
    outgoing,
    lockUp: lockUpTable(db),
    photos: photoTable(db),
    lineage: lineageTable(db),
    tins: tinTable(db),
    coatings: coatingTable(db),
    forecast: forecastTable(db),
    pending: pendingTable(db),
    calibrations: calibrationTable(db),
    faults: sensorFaultTable(db),
    changes: changeTable(db),
    rules: topicRuleTable(db),
    siteName: siteNameTable(db),
  };
}

/**
 * Everything that writes. Synchronous; meant to live in the one thread that owns the connection.
 *
 * @param timeUnknownBit - flag of readings whose time is not known: they never count for cure
 * @param posting - who is told of a notice
 */
export function storeWriter(
  db: Database,
  timeUnknownBit: number,
  maxSensors = 2000,
  posting: PostingPlan = noPosting,
) {
  const tables = { ...tablesOf(db, posting), readings: readingIntake(db) };
  const committer = readingCommitter(db, tables, timeUnknownBit, maxSensors);
  const facts = factRecorder(db, tables, committer);
  const withPending = db.transaction((group: ReadingGroup, placedRanks: number[]): Committed => {
    tables.pending.insert(group.pending ?? []);
    tables.pending.drop(placedRanks);
    return committer.commit(group);
  });
  function commitWithPending(group: ReadingGroup, placedRanks: number[]): Committed {
    try {
      return withPending.immediate(group, placedRanks);
    } catch (cause) {
      // Also where the commit itself failed, after the committer’s part had gone well.
      committer.forget();
      tables.readings.forget();
      throw cause;
    }
  }
  return {
    ...facts,
    ...topicRuleRecorder(db, tables, {
      placeSensor: facts.placeSensor,
      forget: committer.forget,
      maxSensors,
    }),
    ...photoRecorder(db, tables),
    ...trustRecorder(tables, committer, editIn(db, committer)),
    ...hourPacker(db, tables.readings),
    ...lettingGo(db),
    /** Does nothing: that it was done shows that whoever writes is not stuck. */
    answer: (): void => {},
    ...messageKeeper(db, tables.outgoing),
    commitReadings: (group: ReadingGroup): Committed =>
      group.pending?.length ? commitWithPending(group, []) : committer.commit(group),
    /** Gives readings that waited for the clock their places, in one transaction. */
    placePending: (group: ReadingGroup, ranks: number[]): Committed =>
      commitWithPending(group, ranks),
    noteTrustedBoot: (boot: string): void => tables.pending.noteTrustedBoot(boot),
    /**
     * Keeps hour sums that were reckoned, and clears the marks that they settle, in one
     * transaction: a crash leaves either the mark or the new sums.
     */
    saveHours: (blocks: HourBlock[], settledRanks: number[]): void => {
      db.transaction(() => {
        for (const block of blocks) tables.hours.save(block);
        for (const rank of settledRanks) tables.hours.clearDirty(rank);
      }).immediate();
    },
    keepForecast: (points: OutdoorForecastPoint[]): void => tables.forecast.keep(points),
    keepOnlyModels: (models: string[]): void => {
      db.transaction(() => tables.hours.keepOnly(models)).immediate();
    },
    /** Copies the file's log into the file, for the end of a day and a clean stop. */
    checkpoint: () => {
      db.pragma('wal_checkpoint(TRUNCATE)');
    },
    close: (): void => {
      db.close();
    },
  };
}
export type StoreWriter = ReturnType<typeof storeWriter>;

/** Everything that reads, for a second, read-only connection. */
export function storeReader(db: Database) {
  const tables = tablesOf(db, noPosting);
  const { places, sensors, readings, hours, refused, plans, batches, coats, remarks } = tables;
  const { notices, outgoing, lockUp, forecast, pending, calibrations, faults } = tables;
  const { lineage, tins, coatings } = tables;
  return {
    places: places.all,
    sensors: sensors.all,
    sensorById: sensors.byId,
    sensorStays: sensors.stays,
    readingsBetween: readings.between,
    readingRun: readings.run,
    readingBefore: readings.before,
    readingAfter: readings.after,
    readingExtent: readings.extent,
    readingOutline: readingOutlines(db, readings),
    hourExtremes: hourExtremes(db, readings),
    lapsedOutlines: lapsedOutlines(db),
    hourRange: hours.range,
    hoursBetween: hours.between,
    dirtySpans: hours.dirtySpans,
    refused: refused.newest,
    plans: plans.all,
    batches: batches.all,
    moves: batches.moves,
    coats: coats.all,
    tests: coats.tests,
    remarks: remarks.all,
    handReadings: remarks.handReadings,
    photosOf: tables.photos.ofBatch,
    photo: tables.photos.one,
    notices: notices.newest,
    dueMessages: outgoing.due,
    channelTallies: outgoing.tally,
    lockUpTicks: lockUp.all,
    calibrations: calibrations.standing,
    calibrationHistory: calibrations.all,
    faults: faults.all,
    splits: lineage.splits,
    merges: lineage.merges,
    mountingTicks: lineage.ticks,
    tins: tins.all,
    coatings: coatings.all,
    coatingSteps: coatings.steps,
    outdoorForecast: forecast.newest,
    pendingReadings: pending.oldest,
    pendingBoots: pending.boots,
    trustedBoot: pending.trustedBoot,
    topicRules: tables.rules.all,
    siteName: tables.siteName.newest,
    openMessages: tables.openMessages.all,
    close: (): void => {
      db.close();
    },
  };
}
export type StoreReader = ReturnType<typeof storeReader>;
