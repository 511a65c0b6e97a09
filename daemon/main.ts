import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { v7 as newId } from 'uuid';
import { readingFlagBits } from '../sensors/correct/reading-time.ts';
import type { Clock } from './clock.ts';
import { BoardcureError } from './contract/problem.ts';
import { corrected } from './corrected.ts';
import { siteEdits } from './edits.ts';
import { buildServer } from './http/server.ts';
import { forecastPort } from './ingest/forecast-port.ts';
import { groupCommit } from './ingest/group-commit.ts';
import { createIntake } from './ingest/intake.ts';
import { listen, listening, openMessagePort } from './listening.ts';
import { modelPair, requirementPrior } from './model-settings.ts';
import { coatChart } from './monitor/batch-chart.ts';
import { createMonitor } from './monitor/monitor.ts';
import { statePublisher } from './notify/mqtt-state.ts';
import { defaultPlans } from './rules/coating-plan.ts';
import { startSchedule } from './schedule/cron.ts';
import type { Settings } from './settings/schema.ts';
import { siteHealth } from './site-health.ts';
import { siteTime, teachClock } from './site-time.ts';
import { nightFolder, nightlyBackups } from './store/backup-nightly.ts';
import type { Committed } from './store/commit-readings.ts';
import { damageWatch } from './store/damage-watch.ts';
import { spaceDoubts } from './store/free-space.ts';
import { databaseFile, openForReading } from './store/open.ts';
import { storeReader } from './store/store.ts';
import { startStoreThread } from './store/thread.ts';
import { storeUpkeep } from './store/upkeep.ts';

export interface DaemonLog {
  info(facts: object, text: string): void;
  warn(facts: object, text: string): void;
  error(facts: object, text: string): void;
}

export interface DaemonParts {
  settings: Settings;
  clock: Clock;
  log: DaemonLog;
}

export interface Ready {
  event: 'ready';
  http: number;
  /** Port of the embedded broker; null with an external one. */
  mqtt: number | null;
  data: string;
}

export interface Daemon {
  ready: Ready;
  /** Settles when something the daemon cannot live without is gone. */
  failed: Promise<Error>;
  close(): Promise<void>;
}

/** How long a full disk may hold up another broker, which keeps what is not acknowledged. */
const longestHoldOfBrokerMs = 10 * 60_000;

/**
 * Puts the daemon together and starts it: store, monitor, intake, pages. Closing goes the other way.
 *
 * @throws Error saying what to do when a port is taken or the database cannot be opened
 */
export async function startDaemon({ settings, clock, log }: DaemonParts): Promise<Daemon> {
  const closers: (() => Promise<unknown> | unknown)[] = [];
  const close = async () => {
    for (const closer of closers.splice(0).reverse()) await closer();
  };
  try {
    return await compose();
  } catch (cause) {
    await close();
    throw cause;
  }

  async function compose(): Promise<Daemon> {
    const file = databaseFile(settings.data);
    const writer = await startStoreThread({
      file,
      timeUnknownBit: readingFlagBits['time-unknown'],
      maxSensors: settings.mqtt.maxSensors,
    });
    closers.push(() => writer.close());
    const reader = storeReader(openForReading(file));
    closers.push(() => reader.close());
    teachClock(clock, reader);
    const models = modelPair(settings.cure);
    await writer.keepOnlyModels([models.ruling.name, models.beside.name]);
    if (reader.plans().length === 0) {
      for (const plan of defaultPlans) {
        const createdAt = clock.now();
        await writer.createPlan({ id: newId(), ...plan, isDefault: true, createdAt });
      }
    }

    const listeners = new Set<(batchId: string | null) => void>();
    const changed = (batchId: string | null) => {
      for (const listener of listeners) listener(batchId);
    };
    const onChange = (listener: (batchId: string | null) => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    };
    const maxGapMs = settings.cure.maxGapHours * 3_600_000;
    const monitor = createMonitor({
      source: reader,
      keeper: writer,
      corrected,
      flags: { timeUnknown: readingFlagBits['time-unknown'] },
      models,
      prior: requirementPrior(models.ruling),
      limits: settings.cure,
      localLimitPpm: settings.solvent.limitPpm,
      maxGapMs,
      newId,
      failed: (cause) => log.error({ cause: String(cause) }, 'hour sums could not be kept'),
    });

    const upkeep = storeUpkeep(writer, settings.storage, (cause) =>
      log.error({ cause: String(cause) }, 'readings could not be packed'),
    );
    closers.push(() => upkeep.close());
    const committed = (result: Committed) => {
      upkeep.tookIn(result.fresh.length, clock.now());
      intake.count(result.fresh.length, result.duplicates, result.refused);
      try {
        monitor.committed(result);
      } catch (cause) {
        // The readings are on disk: what was made of them in memory is made anew from there.
        log.error({ cause: String(cause) }, 'a commit could not be worked in; starting over');
        monitor.startOver();
      }
      changed(null);
    };
    const queue = groupCommit({
      commit: (group) => writer.commitReadings(group),
      committed,
      failed: (cause) => log.error({ cause: cause.message }, 'a group of readings was refused'),
      now: clock.now,
      isFull: (cause) => cause instanceof BoardcureError && cause.code === 'BC_STORE_FULL',
      fullChanged(isFull) {
        if (isFull) log.error({}, 'the disk is full; nothing is acknowledged until there is space');
        else log.info({}, 'the disk has space again; recording goes on');
        changed(null);
      },
      // Another broker keeps what is not acknowledged; only nodes are let go before they give up.
      ...(settings.mqtt.external === null ? {} : { longestHoldMs: longestHoldOfBrokerMs }),
      ...settings.commit,
    });
    const time = siteTime({ clock, reader, writer, committed, log });
    closers.push(() => time.close());
    const intake = createIntake({
      site: settings.site,
      maxPayloadBytes: settings.mqtt.maxPayloadBytes,
      now: clock.now,
      clockTrusted: clock.trusted,
      boot: { name: clock.boot, upMs: clock.monotonic },
      heardTime: time.heardTime,
      queue,
    });
    await time.settle();
    const take = forecastPort({
      site: settings.site,
      now: clock.now,
      async keep(points) {
        await writer.keepForecast(points);
        monitor.forecastChanged();
        changed(null);
      },
      refused: () => {
        intake.counts.refused++;
      },
      queue,
      others: intake.take,
    });
    const port = await openMessagePort(settings, take, log);
    closers.push(async () => {
      await port.close();
      await queue.drained();
    });

    const { keep, at: backupAt } = settings.backup;
    const damage = damageWatch(file);
    closers.push(() => damage.close());
    const backups = nightlyBackups({ file, folder: nightFolder(settings), keep });
    closers.push(() => backups.close());
    const leastSpace = settings.storage.lowSpaceMiB * 1_048_576;
    const health = siteHealth({
      port,
      counts: intake.counts,
      isFull: queue.isFull,
      doubts: [
        time.doubts,
        damage.doubts,
        backups.doubts,
        () => spaceDoubts(settings.data, leastSpace),
      ],
    });
    const app = await buildServer({
      site: settings.site,
      view: {
        facts: monitor.facts,
        air: monitor.air,
        places: monitor.overview,
        batch: monitor.assess.batch,
        summary: monitor.assess.summary,
        coat: monitor.assess.coat,
        touchTest: monitor.assess.touchTest,
        chart: (batchId, points, now) => {
          const facts = monitor.facts();
          const coat = facts.coats.get(batchId)?.at(-1);
          const empty = { coatId: null, at: [], tempC: [], rhPercent: [], degreeHours: [] };
          return coat
            ? { batchId, ...coatChart(facts, monitor, models.ruling, coat, now, points) }
            : { batchId, ...empty };
        },
        notices: reader.notices,
      },
      edits: siteEdits(writer, monitor, changed),
      readings: {
        readingsBetween: reader.readingsBetween,
        readingOutline: reader.readingOutline,
        newestReading: (sensorKey, quantity) =>
          reader.readingBefore(sensorKey, quantity, Number.MAX_SAFE_INTEGER, 0),
        corrected,
        refused: reader.refused,
      },
      health,
      now: clock.now,
      speed: () => clock.speed,
      newId,
      onChange,
      dashboardFolder: builtDashboard(),
      longestGapMs: maxGapMs,
      maxStreams: settings.http.maxStreams,
      log,
    });
    closers.push(() => app.close());

    const publish = statePublisher({
      site: settings.site,
      view: monitor,
      port,
      now: clock.now,
      failed: (cause) => log.error({ cause: String(cause) }, 'state could not be published'),
    });
    const stopPublishing = onChange(publish.changed);
    closers.push(() => {
      stopPublishing();
      publish.close();
    });
    const schedule = startSchedule({
      async everyMinute() {
        await time.settle();
        if (await monitor.watchNotices(clock.now())) changed(null);
        else if (listeners.size > 0) changed(null);
      },
      pack: () => upkeep.pack(clock.now()),
      async nightly() {
        await upkeep.letGo(clock.now());
        await writer.checkpoint();
        const faults = await damage.look();
        if (faults.length > 0) log.error({ faults }, 'the database is damaged');
      },
      backup:
        keep === 0
          ? null
          : {
              at: backupAt,
              async whenDue(isItsHour) {
                // A simulated shed is gone tomorrow.
                if (clock.speed > 1) return;
                const copy = await backups.whenDue(clock.now(), isItsHour);
                if (copy)
                  log.info({ file: copy.file, bytes: copy.bytes }, 'the database was backed up');
              },
            },
      failed: (cause) => log.error({ cause: String(cause) }, 'a repeated act failed'),
      speed: () => clock.speed,
    });
    closers.push(() => schedule.close());

    const http = await listen(app, settings.http);
    await listening(port);
    return {
      ready: { event: 'ready', http, mqtt: port.port, data: settings.data },
      failed: writer.ended.then((cause) => cause ?? new Promise<Error>(() => {})),
      close,
    };
  }
}

/** The dashboard that the build left beside the compiled daemon. */
function builtDashboard(): string | null {
  const folder = fileURLToPath(new URL('../dashboard', import.meta.url));
  return existsSync(join(folder, 'index.html')) ? folder : null;
}
