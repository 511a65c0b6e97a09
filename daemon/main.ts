import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { v7 as newId } from 'uuid';
import { correctedValue } from '../sensors/correct/corrected-value.ts';
import { readingFlagBits } from '../sensors/correct/reading-time.ts';
import type { Clock } from './clock.ts';
import type { Quantity } from './contract/quantity.ts';
import { siteEdits } from './edits.ts';
import { buildServer } from './http/server.ts';
import { startBroker } from './ingest/broker.ts';
import { forecastPort } from './ingest/forecast-port.ts';
import { groupCommit } from './ingest/group-commit.ts';
import { createIntake } from './ingest/intake.ts';
import type { MessagePort } from './ingest/message-port.ts';
import { startSubscriber } from './ingest/subscriber.ts';
import { modelPair, requirementPrior } from './model-settings.ts';
import { coatChart } from './monitor/batch-chart.ts';
import { createMonitor } from './monitor/monitor.ts';
import { statePublisher } from './notify/mqtt-state.ts';
import { defaultPlans } from './rules/coating-plan.ts';
import { startSchedule } from './schedule/cron.ts';
import type { Settings } from './settings/schema.ts';
import { siteHealth } from './site-health.ts';
import { databaseFile, openForReading } from './store/open.ts';
import { storeReader } from './store/store.ts';
import { startStoreThread } from './store/thread.ts';

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

const corrected = (quantity: Quantity, raw: number) => correctedValue(quantity, raw).value;

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
    });
    closers.push(() => writer.close());
    const reader = storeReader(openForReading(file));
    closers.push(() => reader.close());
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

    const queue = groupCommit({
      commit: (group) => writer.commitReadings(group),
      committed(result) {
        intake.count(result.fresh.length, result.duplicates);
        try {
          monitor.committed(result);
        } catch (cause) {
          // The readings are on disk: what was made of them in memory is made anew from there.
          log.error({ cause: String(cause) }, 'a commit could not be worked in; starting over');
          monitor.startOver();
        }
        changed(null);
      },
      failed: (cause) => log.error({ cause: cause.message }, 'a group of readings was refused'),
      now: clock.now,
      ...settings.commit,
    });
    const intake = createIntake({
      site: settings.site,
      maxPayloadBytes: settings.mqtt.maxPayloadBytes,
      now: clock.now,
      clockTrusted: clock.trusted,
      queue,
    });
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

    const health = siteHealth({ port, counts: intake.counts, clock });
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
        if (await monitor.watchNotices(clock.now())) changed(null);
        else if (listeners.size > 0) changed(null);
      },
      nightly: () => writer.checkpoint(),
      failed: (cause) => log.error({ cause: String(cause) }, 'a repeated act failed'),
      speed: () => clock.speed,
    });
    closers.push(() => schedule.close());

    const http = await listen(app, settings.http);
    return {
      ready: { event: 'ready', http, mqtt: port.port, data: settings.data },
      failed: writer.ended.then((cause) => cause ?? new Promise<Error>(() => {})),
      close,
    };
  }
}

function openMessagePort(
  settings: Settings,
  take: Parameters<typeof startBroker>[0]['take'],
  log: DaemonLog,
): Promise<MessagePort> | MessagePort {
  const { host, port, external, clientId } = settings.mqtt;
  if (external === null) return startBroker({ host, port, take, log });
  return startSubscriber({
    url: external,
    clientId: clientId ?? `boardcure-${settings.site}`,
    site: settings.site,
    take,
    log,
  });
}

async function listen(
  app: Awaited<ReturnType<typeof buildServer>>,
  { host, port }: Settings['http'],
): Promise<number> {
  try {
    await app.listen({ host, port });
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    throw new Error(
      code === 'EADDRINUSE'
        ? `Port ${port} for the pages is taken on ${host}. Stop what uses it, or choose another with --http.`
        : `The pages cannot be served on ${host}:${port}: ${message}. Choose another address with --http.`,
      { cause },
    );
  }
  const address = app.server.address();
  return typeof address === 'object' && address ? address.port : port;
}

/** The dashboard that the build left beside the compiled daemon. */
function builtDashboard(): string | null {
  const folder = fileURLToPath(new URL('../dashboard', import.meta.url));
  return existsSync(join(folder, 'index.html')) ? folder : null;
}
