import { v7 as newId } from 'uuid';
import { readingFlagBits } from '../sensors/correct/reading-time.ts';
import { changes } from './changes.ts';
import type { Clock } from './clock.ts';
import { type Closing, closing } from './closing.ts';
import { correction } from './corrected.ts';
import type { DaemonLog } from './daemon-log.ts';
import { listen, listening } from './listening.ts';
import { siteMetrics } from './metrics.ts';
import { requirementPrior } from './model-settings.ts';
import { createMonitor } from './monitor/monitor.ts';
import { morningTelling } from './morning-telling.ts';
import { keptMessagesMs, noticesOut, siteTimeZone } from './notices-out.ts';
import { statePublisher } from './notify/mqtt-state.ts';
import { openSiteAccess } from './open-access.ts';
import { openSite } from './open-site.ts';
import { ownSite } from './own-site.ts';
import { startSchedule } from './schedule/cron.ts';
import type { Settings } from './settings/schema.ts';
import { plainGround, type StandingSettings, standingSettings } from './settings/standing.ts';
import { simulatedShed } from './simulated-shed.ts';
import { siteBackups } from './site-backups.ts';
import { siteHealth } from './site-health.ts';
import { siteIntake } from './site-intake.ts';
import { siteFigures } from './site-metrics.ts';
import { sitePages } from './site-pages.ts';
import { siteTls } from './site-tls.ts';
import { siteTopics } from './site-topics.ts';
import { tradeRules } from './trade-settings.ts';

export interface DaemonParts {
  /** Those that hold; where nothing stands behind them, each counts as its default. */
  settings: Settings | StandingSettings;
  clock: Clock;
  log: DaemonLog;
}

export interface Ready {
  event: 'ready';
  http: number;
  /** Port of the embedded broker; null with an external one. */
  mqtt: number | null;
  data: string;
  /** Port of the embedded broker for TLS; left out where there is none. */
  mqttTls?: number;
  /** Whether the pages are served over TLS; left out where not. */
  tls?: boolean;
}

export interface Daemon {
  ready: Ready;
  /** The one-time code that sets the first PIN; null when there is a PIN. For eyes, not for logs. */
  setUpCode: string | null;
  /** Settles when something the daemon cannot live without is gone. */
  failed: Promise<Error>;
  /** Settles when the thread that writes has answered. */
  answers(): Promise<void>;
  close(): Promise<void>;
}

/**
 * Puts the daemon together and starts it: store, monitor, intake, pages. Closing goes the other way.
 *
 * @throws Error saying what to do when a port is taken or the database cannot be opened
 */
export async function startDaemon(parts: DaemonParts): Promise<Daemon> {
  const { atClose, close } = closing();
  try {
    return { ...(await compose(parts, atClose)), close };
  } catch (cause) {
    await close();
    throw cause;
  }
}

async function compose(
  { settings: given, clock, log }: DaemonParts,
  atClose: Closing['atClose'],
): Promise<Omit<Daemon, 'close'>> {
  const standing = 'choose' in given ? given : standingSettings(() => plainGround(given));
  const { settings } = standing;
  const site = await openSite(settings, clock, atClose);
  const { reader, writer, models } = site;
  const changing = changes();
  const metrics = siteMetrics();
  const monitor = createMonitor({
    source: reader,
    keeper: writer,
    correction,
    flags: { timeUnknown: readingFlagBits['time-unknown'] },
    models,
    prior: requirementPrior(models.ruling),
    limits: settings.cure,
    localLimitPpm: () => settings.solvent.limitPpm,
    floorShelfColderK: settings.place.floorShelfColderK,
    noticeLimits: settings.notices,
    timeZone: siteTimeZone(settings),
    maxGapMs: settings.cure.maxGapHours * 3_600_000,
    ahead: settings.work,
    trade: tradeRules(settings),
    newId,
    breathe: () => new Promise((resolve) => setImmediate(resolve)),
    failed: (cause) => log.error({ cause: String(cause) }, 'hour sums could not be kept'),
    reckoned: metrics.hoursReckoned,
  });
  const topics = siteTopics({ settings, clock, log, site, monitor, changes: changing });
  atClose(topics.close);
  const { access, mqttAccess } = openSiteAccess(settings, topics.otherTopics.decode);
  const tls = await siteTls(settings);
  const intake = await siteIntake({
    settings,
    clock,
    log,
    site,
    monitor,
    changes: changing,
    metrics,
    topics,
    mqttAccess,
    tls,
    atClose,
  });
  const { port, time, upkeep, queue, counts } = intake;
  const backups = siteBackups({ settings, clock, log, file: site.file, atClose });
  const health = siteHealth({
    port,
    counts,
    isFull: queue.isFull,
    restartFor: standing.waiting,
    doubts: [time.doubts, ...backups.doubts],
  });
  const figures = siteFigures({
    ...{ health, clock, file: site.file, folder: settings.data },
    ...{ facts: monitor.facts, notices: reader.notices, isSettling: monitor.isSettling },
    ...{ waiting: queue.waiting, lastCommitAt: intake.lastCommitAt },
  });
  atClose(figures.close);
  metrics.lookUp(figures.look);
  const simulated = simulatedShed({
    ...{ host: settings.http.host, log },
    isSimulated: () => clock.speed !== 1,
  });
  atClose(simulated.close);
  const app = await sitePages({
    ...{ settings, clock, log, site, monitor, changes: changing, health, access, mqttAccess, tls },
    topicRules: topics.port,
    ownSite: ownSite({ settings, reader, port, simulated }),
    standing,
    metrics: { ...metrics, pagesListen: figures.pagesListen },
  });
  atClose(() => app.close());

  const publish = statePublisher({
    site: settings.site,
    view: monitor,
    port,
    now: clock.now,
    failed: (cause) => log.error({ cause: String(cause) }, 'state could not be published'),
  });
  const stopPublishing = changing.onChange(publish.changed);
  atClose(() => {
    stopPublishing();
    publish.close();
  });

  const { now } = clock;
  const { deliver } = port;
  const out = noticesOut({ settings, deliver, reader, keeper: writer, now, log });
  const stopTelling = changing.onChange(() => void out.kick());
  atClose(() => {
    stopTelling();
    return out.close();
  });

  const schedule = startSchedule({
    async everyMinute() {
      await time.settle();
      for (const remark of monitor.dewNights(clock.now())) {
        await writer.createRemark(remark, clock.now());
        monitor.factsChanged();
        changing.changed(remark.batchId);
      }
      const found = await monitor.watchFaults(clock.now());
      if ((await monitor.watchNotices(clock.now())) || found) changing.changed(null);
      else if (changing.heard()) changing.changed(null);
    },
    pack: () => upkeep.pack(clock.now()),
    async nightly() {
      await upkeep.letGo(clock.now());
      await writer.pruneMessages(clock.now() - keptMessagesMs);
      await writer.checkpoint();
      await backups.lookForDamage();
      await tls.renew(port, app);
    },
    backup: backups.schedule,
    digest: morningTelling({ settings, clock, monitor, writer, health, sent: out.kick }),
    failed: (cause) => log.error({ cause: String(cause) }, 'a repeated act failed'),
    speed: () => clock.speed,
  });
  atClose(() => schedule.close());

  const http = await listen(app, settings.http);
  await listening(port);
  return {
    ready: {
      ...{ event: 'ready', http, mqtt: port.port, data: settings.data },
      ...(port.tlsPort ? { mqttTls: port.tlsPort } : {}),
      ...(settings.http.tls ? { tls: true } : {}),
    },
    setUpCode: access.setUpCode(),
    answers: () => writer.answer(),
    failed: writer.ended.then((cause) => cause ?? new Promise<Error>(() => {})),
  };
}
