import { rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from 'fastify';
import { v7 as newId } from 'uuid';
import { onTestFinished } from 'vitest';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { type RouteName, type RouteReply, routes } from '../../daemon/contract/routes.ts';
import { correction } from '../../daemon/corrected.ts';
import { siteEdits } from '../../daemon/edits.ts';
import type { HttpParts } from '../../daemon/http/ports.ts';
import { buildServer } from '../../daemon/http/server.ts';
import { modelPair, requirementPrior } from '../../daemon/model-settings.ts';
import { createMonitor } from '../../daemon/monitor/monitor.ts';
import { ownSite } from '../../daemon/own-site.ts';
import { defaultPlans } from '../../daemon/rules/coating-plan.ts';
import { sensorTrust } from '../../daemon/sensor-trust.ts';
import { settingDesk } from '../../daemon/setting-desk.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { plainGround, standingSettings } from '../../daemon/settings/standing.ts';
import { shownOfSite, shownReadings } from '../../daemon/shown-site.ts';
import { siteTopics } from '../../daemon/site-topics.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import type { StoreThread } from '../../daemon/store/thread.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';
import type { Decoded } from '../../sensors/payload/decode-message.ts';
import { openAccess } from '../access/open-access.ts';
import { inThisThread } from '../store/store-sides.ts';

export const hourMs = 3_600_000;
/** The time it is at the site when a test begins. */
export const startAt = Date.UTC(2026, 4, 20, 12);
export const moment = (at: number) => new Date(at).toISOString();

/** What is put into the address, the query and the body of a call. */
export interface RouteGiven {
  id?: string;
  part?: string;
  query?: object;
  body?: object;
}

/** A whole site but for broker and thread: store in memory, monitor, and a server to be asked. */
export interface BuiltSite {
  app: FastifyInstance;
  /** Asks as the computer itself would, unless the options say otherwise. */
  ask(options: InjectOptions): Promise<LightMyRequestResponse>;
  /** Calls a route of the contract, and takes nothing but its own status for an answer. */
  call<N extends RouteName>(name: N, given?: RouteGiven): Promise<RouteReply<N>>;
  /** The same, for a call that is to be refused. */
  refused(name: RouteName, given?: RouteGiven): Promise<Problem>;
  /** A message on any topic as if it had come just now; what it became by a rule. */
  message(topic: string, payload: string): Decoded;
  /** Readings as if they had come from a sensor. */
  hear(sensor: string, quantity: Quantity, values: [at: number, value: number][]): Promise<void>;
  watchNotices(): Promise<void>;
  now: number;
  errors: object[];
}

export const fromHere = {
  remoteAddress: '127.0.0.1',
  headers: { host: 'localhost:8080' },
} as const;

/** What the pictures of a built site may take together. */
export const mostPhotoBytes = 2000;

const off = { state: 'off', port: null, speed: null, fault: null } as const;
const noSimulation = { state: () => off, start: () => off, stop: async () => {} };

export async function build(given: Partial<HttpParts> = {}): Promise<BuiltSite> {
  const db = openForWriting(':memory:');
  const timeUnknownBit = readingFlagBits['time-unknown'];
  const write = inThisThread(storeWriter(db, timeUnknownBit));
  const read = storeReader(db);
  for (const plan of defaultPlans) {
    await write.createPlan({ id: newId(), ...plan, isDefault: true, createdAt: startAt });
  }
  const errors: object[] = [];
  // What is chosen is written there; nothing else is.
  const data = join(tmpdir(), `boardcure-built-${newId()}`);
  const standing = standingSettings(() => plainGround(Settings.parse({ data })));
  const { settings } = standing;
  const models = modelPair(settings.cure);
  const maxGapMs = settings.cure.maxGapHours * hourMs;
  const monitor = createMonitor({
    source: read,
    keeper: write,
    correction,
    flags: { timeUnknown: timeUnknownBit },
    models,
    prior: requirementPrior(models.ruling),
    limits: settings.cure,
    localLimitPpm: () => null,
    maxGapMs,
    ahead: settings.work,
    newId,
    failed: (cause) => errors.push({ cause }),
  });
  const listeners = new Set<(batchId: string | null) => void>();
  const changed = (batchId: string | null) => {
    for (const listener of listeners) listener(batchId);
  };
  const site: Pick<BuiltSite, 'now'> = { now: startAt };
  const counts = { accepted: 0, duplicates: 0, refused: 0, dropped: 0, flagged: 0 };
  const intake = { ...counts, refusing: false };

  const topics = siteTopics({
    ...{ settings, clock: { now: () => site.now }, monitor, changes: { changed } },
    site: { reader: read, writer: write as StoreThread },
    log: { info() {}, warn() {}, error: (facts, text) => errors.push({ ...facts, text }) },
  });

  const { access, mqttAccess } = openAccess();
  const app = await buildServer({
    site: 'shed',
    ownSite: ownSite({
      ...{ settings, reader: read, port: { kind: 'embedded', port: 1883, tlsPort: null } },
      simulated: noSimulation,
    }),
    settings: settingDesk({ standing, monitor, changed }),
    access,
    mqttAccess,
    names: ['shed-computer'],
    limits: settings.http,
    view: shownOfSite({ settings, reader: read, monitor, ruling: models.ruling }),
    edits: siteEdits(write as StoreThread, monitor, changed, mostPhotoBytes),
    readings: shownReadings(read, monitor),
    topicRules: topics.port,
    trust: sensorTrust,
    health: () => ({
      ...{ status: 'ok', reasons: [], reasonsSaid: [], broker: 'embedded', connected: true },
      ...{ intake, clients: null },
    }),
    timeZone: 'UTC',
    voice: siteVoice('en', 'UTC'),
    language: 'en',
    now: () => site.now,
    speed: () => 1,
    newId,
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    dashboardFolder: null,
    longestGapMs: maxGapMs,
    maxStreams: () => 100,
    log: {
      warn: (facts, text) => errors.push({ ...facts, text }),
      error: (facts, text) => errors.push({ ...facts, text }),
    },
    ...given,
  });
  onTestFinished(async () => {
    await app.close();
    db.close();
    rmSync(data, { recursive: true, force: true });
  });

  const ask: BuiltSite['ask'] = (options) =>
    app.inject({ ...fromHere, ...options, headers: { ...fromHere.headers, ...options.headers } });
  const callRoute = (name: RouteName, { id = '', part = '', query, body }: RouteGiven = {}) =>
    ask({
      method: routes[name].method,
      url: routes[name].path.replace(':id', id).replace(':part', part),
      ...(query ? { query: query as Record<string, string> } : {}),
      ...(body ? { payload: body } : {}),
    });

  return Object.assign(site, {
    app,
    ask,
    errors,
    async call<N extends RouteName>(name: N, options?: RouteGiven) {
      const reply = await callRoute(name, options);
      if (reply.statusCode !== routes[name].status) {
        throw new Error(`${name} answered ${reply.statusCode}: ${reply.body}`);
      }
      return reply.json<RouteReply<N>>();
    },
    async refused(name: RouteName, options?: RouteGiven) {
      return problemOf(await callRoute(name, options));
    },
    message(topic: string, payload: string) {
      const bytes = new TextEncoder().encode(payload);
      topics.otherTopics.heard(topic, bytes, false);
      const message = { topic, text: payload, byteLength: bytes.length, bytes };
      return topics.otherTopics.decode(message, site.now);
    },
    async hear(sensor: string, quantity: Quantity, values: [number, number][]) {
      const committed = await write.commitReadings({
        readings: values.map(([at, raw]) => ({ sensor, quantity, at, raw, flags: 0 })),
        refused: [],
        arrivedAt: site.now,
      });
      monitor.committed(committed, site.now);
      changed(null);
    },
    watchNotices: async () => {
      await monitor.watchFaults(site.now);
      await monitor.watchNotices(site.now);
    },
  });
}

/** The problem in a reply; anything else is not one. */
export function problemOf(reply: LightMyRequestResponse): Problem {
  const type = reply.headers['content-type'];
  if (!String(type).startsWith('application/problem+json')) {
    throw new Error(`A problem was expected, but ${reply.statusCode} ${type} came: ${reply.body}`);
  }
  const problem = reply.json<Problem>();
  if (problem.status !== reply.statusCode) {
    throw new Error(`The problem says ${problem.status}, the reply ${reply.statusCode}.`);
  }
  return problem;
}

export const boards = { count: 40, lengthMm: 4200, widthMm: 145, thicknessMm: 22 };

/** A room with a sensor at 20 °C since three days ago, and a batch in it with its first coat. */
export async function withCoat(site: BuiltSite) {
  const room = await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
  const hours = Array.from({ length: 73 }, (_, i) => site.now - (72 - i) * hourMs);
  await site.hear(
    'n1',
    'air-temperature',
    hours.map((at) => [at, 20]),
  );
  await site.hear(
    'n1',
    'relative-humidity',
    hours.map((at) => [at, 60]),
  );
  await site.call('changeSensor', { id: 'n1', body: { placeId: room.id } });
  const batch = await site.call('createBatch', {
    body: {
      name: 'South gable',
      placeId: room.id,
      species: 'norway-spruce',
      surface: 'sawn',
      boards,
    },
  });
  const coat = await site.call('createCoat', {
    id: batch.id,
    body: { coat: 0, finishedAt: moment(site.now - 24 * hourMs) },
  });
  return { room, batch, coat };
}
