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
import type { Monitor } from './monitor/monitor.ts';
import { siteTimeZone } from './notices-out.ts';
import { siteNames } from './open-access.ts';
import type { OpenSite } from './open-site.ts';
import { sensorTrust } from './sensor-trust.ts';
import { settingDesk } from './setting-desk.ts';
import type { Settings } from './settings/schema.ts';
import type { StandingSettings } from './settings/standing.ts';
import { shownOfSite, shownReadings } from './shown-site.ts';
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
    view: shownOfSite({ settings, reader, monitor, ruling: models.ruling }),
    edits: siteEdits(writer, monitor, changed, settings.photos.maxMiB * 1_048_576),
    readings: shownReadings(reader, monitor),
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
