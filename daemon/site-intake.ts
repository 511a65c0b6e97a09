import type { Changes } from './changes.ts';
import type { Clock } from './clock.ts';
import type { Closing } from './closing.ts';
import { BoardcureError } from './contract/problem.ts';
import type { DaemonLog } from './daemon-log.ts';
import type { ClientAccess } from './ingest/client-access.ts';
import { forecastPort } from './ingest/forecast-port.ts';
import { groupCommit } from './ingest/group-commit.ts';
import { createIntake } from './ingest/intake.ts';
import { openMessagePort } from './listening.ts';
import type { SiteMetrics } from './metrics.ts';
import type { Monitor } from './monitor/monitor.ts';
import type { OpenSite } from './open-site.ts';
import type { Settings } from './settings/schema.ts';
import { siteOpenMessages } from './site-open-messages.ts';
import { siteTime } from './site-time.ts';
import type { SiteTls } from './site-tls.ts';
import type { SiteTopics } from './site-topics.ts';
import type { Committed } from './store/commit-readings.ts';
import { storeUpkeep } from './store/upkeep.ts';

/** How long a full disk may hold up another broker, which keeps what is not acknowledged. */
const longestHoldOfBrokerMs = 10 * 60_000;

interface IntakeParts {
  settings: Settings;
  clock: Clock;
  log: DaemonLog;
  site: OpenSite;
  monitor: Monitor;
  changes: Changes;
  metrics: SiteMetrics;
  topics: SiteTopics;
  mqttAccess: ClientAccess;
  tls: SiteTls;
  atClose: Closing['atClose'];
}

/** All that readings pass on their way from the broker to the disk, and to the monitor. */
export async function siteIntake({
  settings,
  clock,
  log,
  site: { reader, writer },
  monitor,
  changes: { changed },
  metrics,
  topics,
  mqttAccess,
  tls,
  atClose,
}: IntakeParts) {
  const upkeep = storeUpkeep(writer, settings.storage, (cause) =>
    log.error({ cause: String(cause) }, 'readings could not be packed'),
  );
  atClose(() => upkeep.close());
  let lastCommitAt: number | null = null;
  const committed = (result: Committed) => {
    lastCommitAt = clock.now();
    if (result.refused > 0) metrics.refused('too-many-sensors', result.refused);
    upkeep.tookIn(result.fresh.length, clock.now());
    intake.count(result.fresh.length, result.duplicates, result.refused);
    try {
      monitor.committed(result, clock.now());
    } catch (cause) {
      // The readings are on disk: what was made of them in memory is made anew from there.
      log.error({ cause: String(cause) }, 'a commit could not be worked in; starting over');
      monitor.startOver();
    }
    changed(null);
  };
  const queue = groupCommit({
    commit: (group) => metrics.timed(group.readings.length, () => writer.commitReadings(group)),
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
  atClose(() => time.close());
  const intake = createIntake({
    site: settings.site,
    maxPayloadBytes: settings.mqtt.maxPayloadBytes,
    now: clock.now,
    clockTrusted: clock.trusted,
    boot: { name: clock.boot, upMs: clock.monotonic },
    heardTime: time.heardTime,
    beyondLimits: monitor.heardImpossible,
    refusedFor: metrics.refused,
    queue,
    otherTopics: topics.otherTopics,
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
      metrics.refused('not-a-forecast');
    },
    queue,
    others: intake.take,
  });
  const port = await openMessagePort(
    settings,
    take,
    topics.filters(),
    { access: mqttAccess, tls, openMessages: siteOpenMessages({ reader, queue, clock, log }) },
    log,
  );
  topics.comeFrom(port);
  atClose(async () => {
    await port.close();
    await queue.drained();
  });

  return {
    ...{ upkeep, queue, time, counts: intake.counts, port },
    lastCommitAt: () => lastCommitAt,
  };
}
