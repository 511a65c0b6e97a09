import { describe, expect, it } from 'vitest';
import type { Route } from '../../daemon/contract/route.ts';
import { accessRoutes } from '../../daemon/contract/routes/access.ts';
import { type RouteName, routes } from '../../daemon/contract/routes.ts';
import {
  type BuiltSite,
  build,
  hourMs,
  moment,
  problemOf,
  type RouteGiven,
  withCoat,
} from './built-site.ts';

/** Three sensors that lay in one box, one of them calibrated already. */
async function boxOfThree(site: BuiltSite) {
  for (const [i, sensor] of ['b1', 'b2', 'b3'].entries()) {
    const values = Array.from({ length: 61 }, (_, n): [number, number] => [
      site.now - (60 - n) * 5 * 60_000,
      [18, 18.1, 20][i] ?? 0,
    ]);
    await site.hear(sensor, 'air-temperature', values);
  }
  const calibration = await site.call('createCalibration', {
    id: 'b3',
    body: { quantity: 'air-temperature', how: { kind: 'offset', add: 0.1 } },
  });
  const box = { sensors: ['b1', 'b2', 'b3'], from: moment(site.now - 5 * hourMs) };
  return { box, calibration };
}

const names = Object.keys(routes) as RouteName[];
const photoId = '019a0000-0000-7000-8000-0000000000aa';
/** How a JPEG begins: as much as is looked at. */
const smallJpeg = Buffer.from([0xff, 0xd8, 0xff, 0xe0]).toString('base64');
const unknownId = '019a0000-0000-7000-8000-000000000000';
const topicRule = {
  pattern: 'farm/{sensor}/temp',
  sensor: '{sensor}',
  payload: 'text',
  values: [{ quantity: 'air-temperature' }],
};

describe('every route of the contract', () => {
  it('is served', async () => {
    const { app } = await build();
    for (const name of names) {
      const { method, path } = routes[name];
      expect(app.hasRoute({ method, url: path }), name).toBe(true);
    }
  });

  it('answers as its schema says', async () => {
    const site = await build();
    const { room, batch, coat } = await withCoat(site);
    const at = moment(site.now);
    const { box, calibration } = await boxOfThree(site);
    const [plan] = await site.call('listPlans');
    const [notice] = await site.call('listNotices');
    const wall = await site.call('createPlace', { body: { name: 'South', kind: 'wall' } });
    const other = await site.call('createBatch', {
      body: {
        ...{ name: 'Other', placeId: room.id, species: 'larch', surface: 'sawn' },
        ...{ boards: batch.boards, planId: plan?.id },
      },
    });
    const twin = await site.call('splitBatch', { id: other.id, body: { boards: 4, at } });
    const up = await site.call('createMove', { id: other.id, body: { at, placeId: wall.id } });
    const tin = await site.call('createTin', { body: { name: 'Red 1' } });
    const [begun, givenUp] = [
      await site.call('beginCoating', { id: other.id, body: { coat: 0, begunAt: at } }),
      await site.call('beginCoating', { id: twin.child.id, body: { coat: 0, begunAt: at } }),
    ];
    const given: Record<Exclude<RouteName, keyof typeof accessRoutes>, RouteGiven> = {
      health: {},
      overview: {},
      listPlaces: {},
      createPlace: { body: { name: 'Rack 1', kind: 'rack', within: room.id } },
      readPlace: { id: room.id },
      changePlace: { id: room.id, body: { volumeM3: 84 } },
      listSensors: {},
      readSensor: { id: 'n1' },
      changeSensor: { id: 'n1', body: { name: 'North wall' } },
      listTopicRules: {},
      createTopicRule: { body: { id: unknownId, ...topicRule, placeId: room.id } },
      changeTopicRule: { id: unknownId, body: { sensor: 'x-{sensor}' } },
      tryTopicRule: { body: { rule: topicRule } },
      foundTopics: {},
      listenForTopics: { body: { minutes: 0 } },
      listCalibrations: { id: 'n1' },
      createCalibration: {
        id: 'n1',
        body: { quantity: 'air-temperature', how: { kind: 'ice-point', shown: 0.2 } },
      },
      changeCalibration: { id: calibration.id, body: { note: 'over night' } },
      compareSensors: { query: { ...box, sensors: box.sensors.join(',') } },
      acceptComparison: { body: box },
      listPlans: {},
      createPlan: { body: { name: 'Mine', surface: 'sawn', coats: plan?.coats } },
      listBatches: {},
      createBatch: {
        body: {
          name: 'B',
          placeId: room.id,
          species: 'larch',
          surface: 'planed',
          boards: batch.boards,
        },
      },
      readBatch: { id: batch.id },
      changeBatch: { id: batch.id, body: { name: 'North gable' } },
      batchChart: { id: batch.id, query: { points: '50' } },
      batchCurves: { id: batch.id, query: { points: '50' } },
      placeCurves: { id: room.id, query: { points: '50' } },
      sensorCurves: { id: 'n1', query: { points: '50' } },
      airChanges: { id: room.id },
      listCoats: { id: batch.id },
      createCoat: { id: batch.id, body: { coat: 1, finishedAt: at } },
      listMoves: { id: batch.id },
      createMove: { id: batch.id, body: { at, placeId: room.id } },
      listTests: { id: batch.id },
      createTest: { id: batch.id, body: { at, gate: 'turn', passed: true } },
      listRemarks: { id: batch.id },
      createRemark: { id: batch.id, body: { at, kind: 'runs' } },
      createReading: {
        body: { placeId: room.id, quantity: 'wood-moisture', values: [14, 15], at },
      },
      listReadings: {},
      series: { query: { sensor: 'n1', quantity: 'air-temperature' } },
      listNotices: {},
      changeNotice: { id: notice?.id ?? '', body: { seen: true } },
      readNoticeChannels: {},
      fitToBrush: { query: { placeId: room.id, batchId: batch.id } },
      readLockUp: { query: { day: at.slice(0, 10) } },
      tickLockUp: { body: { line: 'heater' } },
      listRefused: {},
      mixture: { query: { areaM2: '80', spreadingM2PerL: '8', paint: '35', turpentine: '15' } },
      removeTopicRule: { id: unknownId },
      planAhead: { query: { boards: '40' } },
      whatHelps: { id: batch.id },
      batchReport: { id: batch.id },
      season: {},
      createPhoto: { id: batch.id, body: { id: photoId, at, picture: smallJpeg } },
      listPhotos: { id: batch.id },
      removePhoto: { id: batch.id, part: photoId },
      readMqttAccess: {},
      createMqttLogin: { body: { name: 'north-node', sensors: ['n1'] } },
      changeMqttLogin: { id: 'north-node', body: { sensors: ['n1', 'n2'] } },
      changeMqttMode: { body: { mode: 'pairing' } },
      removeMqttLogin: { id: 'north-node' },
      shoppingList: { query: { paintTinsL: '10,5,1', turpentineTinsL: '1' } },
      listPlanVersions: { id: plan?.id ?? '' },
      createPlanVersion: { id: plan?.id ?? '', body: { coats: plan?.coats } },
      tickMounting: { id: other.id, part: up.id, body: { line: 'notches', at } },
      splitBatch: { id: other.id, body: { boards: 3, at } },
      listTins: {},
      createTin: { body: { name: 'Red 2', openedAt: at } },
      changeTin: { id: tin.id, body: { empty: true } },
      listCoatings: { id: other.id },
      beginCoating: { id: batch.id, body: { coat: 2, begunAt: at } },
      tickCoating: { id: other.id, part: begun.id, body: { step: 'face', at } },
      endCoating: { id: twin.child.id, part: givenUp.id, body: { finishedAt: null } },
      mergeBatch: { id: other.id, body: { batchId: twin.child.id, at } },
      morningRound: {},
      trade: {},
      readSite: {},
      changeSite: { body: { name: 'The paint shed' } },
      listSettings: {},
      changeSettings: { body: { settings: { 'cure.readyAt': 0.92 } } },
      listRecords: { query: { q: 'north', kind: 'coat,test', limit: '5' } },
      readSimulatedShed: {},
      startSimulatedShed: { body: { speed: 60 } },
      stopSimulatedShed: {},
      removeCoat: { id: batch.id, part: coat.id },
      withdrawCalibration: { id: calibration.id },
    };
    const reply = Object.fromEntries(names.map((name) => [name, routes[name] as Route]));
    // What removes comes last, so that there is something to show before.
    for (const name of Object.keys(given) as (keyof typeof given)[]) {
      const answer = await site.call(name, given[name]);
      expect(reply[name]?.reply.safeParse(answer).error?.issues ?? [], name).toEqual([]);
    }
    // Those of access are walked in access.test.ts: each changes who may walk the next.
    expect([...Object.keys(given), ...Object.keys(accessRoutes)].sort()).toEqual([...names].sort());
    expect(site.errors).toEqual([]);
  });

  it('that names a thing says so when there is none', async () => {
    const site = await build();
    for (const name of names) {
      const route: Route = routes[name];
      if (!route.path.includes(':id') || route.body) continue;
      const id = route.path.includes('sensors') ? 'nowhere' : unknownId;
      expect(await site.refused(name, { id, part: unknownId }), name).toMatchObject({
        status: 404,
        code: 'BC_THING_UNKNOWN',
      });
    }
  });

  it('that takes a body refuses a field that it does not know, and points at it', async () => {
    const site = await build();
    for (const name of names) {
      const route: Route = routes[name];
      if (!route.body) continue;
      const id = route.path.includes('sensors') ? 'nowhere' : unknownId;
      const body = { 'colour/shade~2': 'red' };
      const problem = await site.refused(name, { id, part: unknownId, body });
      expect(problem, name).toMatchObject({ status: 400, code: 'BC_REQUEST_INVALID' });
      const pointers = problem.errors?.map((fault) => fault.pointer);
      // RFC 6901, section 3: ~ is written ~0 and / is written ~1.
      expect(pointers, name).toContain('/colour~1shade~02');
    }
  });

  it('changes nothing for anyone but the computer itself', async () => {
    const site = await build();
    for (const name of names) {
      const { method, path, role }: Route = routes[name];
      if (method === 'GET' || role === 'anyone') continue;
      const reply = await site.app.inject({
        method,
        url: path.replace(':id', unknownId).replace(':part', unknownId),
        remoteAddress: '192.168.1.20',
        headers: { host: 'localhost:8080' },
        payload: {},
      });
      expect(problemOf(reply), name).toMatchObject({ status: 403, code: 'BC_WRITE_NOT_ALLOWED' });
    }
  });
});

describe('GET batches/:id', () => {
  it('gives the degree-hours of a day at 20 °C above the datum of 5 °C', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const { coats } = await site.call('readBatch', { id: batch.id });
    expect(coats).toHaveLength(1);
    // 24 h × (20 − 5) °C.
    const [coat] = coats;
    expect(coat?.degreeHours).toBeCloseTo(360, 9);
    expect(coat?.equivalentHours).toBeCloseTo(24, 9);
    expect(coat?.gapHours).toBe(0);
    expect(Object.keys(coat?.gates ?? {})).toEqual(['turn', 'stack', 'mount', 'sand', 'recoat']);
  });

  it('lets a coat that was taken back be recorded anew', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    expect((await site.call('removeCoat', { id: batch.id, part: coat.id })).coats).toEqual([]);
    expect(await site.refused('removeCoat', { id: batch.id, part: coat.id })).toMatchObject({
      code: 'BC_THING_UNKNOWN',
    });
    const again = { coat: 0, finishedAt: moment(site.now - 12 * hourMs) };
    const second = await site.call('createCoat', { id: batch.id, body: again });
    expect(second.degreeHours).toBeCloseTo(180, 9);
  });
});

interface Operation {
  operationId: string;
  parameters?: { name: string; in: string }[];
  responses: object;
}

describe('the OpenAPI document', () => {
  it('names every route once, with its parameters', async () => {
    const { ask } = await build();
    const document = (await ask({ url: '/api/v1/openapi.json' })).json();
    expect(document.openapi).toMatch(/^3\.1\./);
    const operations = Object.entries<Record<string, Operation>>(document.paths).flatMap(
      ([path, methods]) =>
        Object.entries(methods).map(([method, operation]) => ({ path, method, ...operation })),
    );
    const ids = operations.map((operation) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).not.toContain(undefined);
    for (const name of names) {
      const { method, path, status } = routes[name];
      const operation = operations.find((one) => one.operationId === name);
      // OpenAPI 3.1, “Path Templating”: parameters stand in braces.
      expect(operation?.path, name).toBe(path.replace(/:(\w+)/g, '{$1}'));
      expect(operation?.method, name).toBe(method.toLowerCase());
      expect(Object.keys(operation?.responses ?? {}), name).toContain(String(status));
      const inPath = (operation?.parameters ?? []).filter((one) => one.in === 'path');
      expect(
        inPath.map((one) => `{${one.name}}`),
        name,
      ).toEqual(operation?.path.match(/\{\w+\}/g) ?? []);
    }
  });

  it('tells units and meanings of fields', async () => {
    const { ask } = await build();
    const text = (await ask({ url: '/api/v1/openapi.json' })).body;
    expect(text).toContain('last board; cure counts from here');
    expect(text).toContain('°C·h');
  });
});
