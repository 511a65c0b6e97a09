import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { v7 as newId } from 'uuid';
import type { Changes } from './changes.ts';
import type { Clock } from './clock.ts';
import type { DaemonLog } from './daemon-log.ts';
import { siteEdits } from './edits.ts';
import type { HttpParts } from './http/ports.ts';
import { buildServer } from './http/server.ts';
import { coatChart } from './monitor/batch-chart.ts';
import type { Monitor } from './monitor/monitor.ts';
import { noticeChannels } from './notice-channels.ts';
import { siteTimeZone } from './notices-out.ts';
import { siteNames } from './open-access.ts';
import type { OpenSite } from './open-site.ts';
import { sensorTrust } from './sensor-trust.ts';
import { settingDesk } from './setting-desk.ts';
import type { Settings } from './settings/schema.ts';
import type { StandingSettings } from './settings/standing.ts';
import type { SiteTls } from './site-tls.ts';
import { siteVoice } from './wording/voice.ts';

interface PagesParts {
  access: HttpParts['access'];
  mqttAccess: HttpParts['mqttAccess'];
  tls: SiteTls;
  settings: Settings;
  clock: Clock;
  log: DaemonLog;
  site: OpenSite;
  monitor: Monitor;
  changes: Changes;
  health: HttpParts['health'];
  topicRules: HttpParts['topicRules'];
  metrics: NonNullable<HttpParts['metrics']>;
  ownSite: HttpParts['ownSite'];
  standing: StandingSettings;
}

/** The server of pages and of the API, over what the monitor knows and the store keeps. */
export function sitePages({
  access,
  mqttAccess,
  tls,
  settings,
  clock,
  log,
  site: { reader, writer, models },
  monitor,
  changes: { changed, onChange },
  health,
  topicRules,
  metrics,
  ownSite,
  standing,
}: PagesParts) {
  return buildServer({
    site: settings.site,
    ownSite,
    settings: settingDesk({ standing, monitor, changed }),
    access,
    mqttAccess,
    names: siteNames(settings),
    limits: settings.http,
    ...(settings.http.tls ? { tls } : {}),
    authority: tls.authority,
    view: {
      facts: monitor.facts,
      air: monitor.air,
      wood: monitor.wood,
      places: monitor.overview,
      batch: monitor.assess.batch,
      summary: monitor.assess.summary,
      coat: monitor.assess.coat,
      touchTest: monitor.assess.touchTest,
      move: monitor.assess.move,
      trade: monitor.trade,
      morningRound: monitor.morningRound,
      chart: (batchId, points, now) => {
        const facts = monitor.facts();
        const coat = facts.coats.get(batchId)?.at(-1);
        const empty = { coatId: null, at: [], tempC: [], rhPercent: [], degreeHours: [] };
        return coat
          ? { batchId, ...coatChart(facts, monitor, models.ruling, coat, now, points) }
          : { batchId, ...empty };
      },
      curves: monitor.curves,
      fitToBrush: monitor.fitToBrush,
      lockUp: monitor.lockUp,
      noticeChannels: () => noticeChannels(settings, reader.channelTallies()),
      notices: reader.notices,
      planAhead: monitor.ahead,
      whatHelps: monitor.whatHelps,
      report: monitor.report,
      season: monitor.season,
      photos: reader.photosOf,
      photo: reader.photo,
      calibrationHistory: reader.calibrationHistory,
    },
    edits: siteEdits(writer, monitor, changed, settings.photos.maxMiB * 1_048_576),
    readings: {
      readingsBetween: reader.readingsBetween,
      readingOutline: reader.readingOutline,
      newestReading: (sensorKey, quantity) =>
        reader.readingBefore(sensorKey, quantity, Number.MAX_SAFE_INTEGER, 0),
      corrected: monitor.corrected,
      refused: reader.refused,
    },
    topicRules,
    trust: sensorTrust,
    health,
    timeZone: siteTimeZone(settings),
    voice: siteVoice(settings.language, siteTimeZone(settings)),
    language: settings.language,
    now: clock.now,
    speed: () => clock.speed,
    newId,
    onChange,
    dashboardFolder: builtDashboard(),
    longestGapMs: settings.cure.maxGapHours * 3_600_000,
    maxStreams: () => settings.http.maxStreams,
    metrics,
    log,
  });
}

/** The dashboard that the build left beside the compiled daemon. */
function builtDashboard(): string | null {
  const folder = fileURLToPath(new URL('../dashboard', import.meta.url));
  return existsSync(join(folder, 'index.html')) ? folder : null;
}
