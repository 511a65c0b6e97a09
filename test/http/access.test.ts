import { describe, expect, it } from 'vitest';
import { roles } from '../../daemon/contract/role.ts';
import type { Route } from '../../daemon/contract/route.ts';
import { type RouteName, routes } from '../../daemon/contract/routes.ts';
import { mayDo, neededRole } from '../../daemon/rules/role.ts';
import { openAccess } from '../access/open-access.ts';
import { codeOf, deviceAt, operatorPin, ownerPin, siteWithPin } from './access-site.ts';
import { build } from './built-site.ts';

const names = Object.keys(routes) as RouteName[];
const someId = '019a0000-0000-7000-8000-000000000000';

describe('before a PIN is set', () => {
  it('the computer itself may do everything, and anyone else may look', async () => {
    const site = await build();
    expect((await site.call('readSession')).by).toBe('this-computer');
    const phone = deviceAt(site, '192.168.1.20');
    expect((await phone.send({ url: '/api/v1/session' })).json()).toMatchObject({
      role: 'look',
      by: 'network',
      pinSet: false,
    });
    expect(codeOf(await phone.makePlace())).toBe('BC_WRITE_NOT_ALLOWED');
  });

  it('the code of the first start sets one from another device, once', async () => {
    const { access } = openAccess();
    const site = await build({ access });
    const setUpCode = access.setUpCode() ?? '';
    expect(setUpCode).toMatch(/^\w{4}-\w{4}-\w{4}$/);
    const phone = deviceAt(site, '192.168.1.20');
    const set = (payload: object) => phone.send({ method: 'POST', url: '/api/v1/pin', payload });
    expect(codeOf(await set({ pin: ownerPin }))).toBe('BC_WRITE_NOT_ALLOWED');
    expect(codeOf(await set({ pin: ownerPin, setUpCode: 'AAAA-BBBB-CCCC' }))).toBe('BC_PIN_WRONG');
    // A PIN that is too easy costs nobody the code.
    expect(codeOf(await set({ pin: '123456', setUpCode }))).toBe('BC_REQUEST_INVALID');
    const reply = await set({ pin: ownerPin, setUpCode: setUpCode.toLowerCase() });
    expect(reply.json()).toMatchObject({ role: 'own', pinSet: true, setUpCode: false });
    expect((await phone.makePlace()).statusCode).toBe(201);
    const other = deviceAt(site, '192.168.1.21');
    const again = await other.send({
      method: 'POST',
      url: '/api/v1/pin',
      payload: { pin: 'another-1', setUpCode },
    });
    expect(codeOf(again)).toBe('BC_LOGIN_NEEDED');
  });

  it('that code runs out', async () => {
    const { access, time } = openAccess();
    const site = await build({ access });
    const setUpCode = access.setUpCode() ?? '';
    time.ms += 25 * 3_600_000;
    const phone = deviceAt(site, '192.168.1.20');
    const payload = { pin: ownerPin, setUpCode };
    expect(codeOf(await phone.send({ method: 'POST', url: '/api/v1/pin', payload }))).toBe(
      'BC_PIN_WRONG',
    );
  });
});

describe('once a PIN is set', () => {
  it('the computer itself has to log in as anyone else', async () => {
    const { site } = await siteWithPin();
    const problem = await site.refused('createPlace', { body: { name: 'Shed', kind: 'room' } });
    expect(problem).toMatchObject({ status: 401, code: 'BC_LOGIN_NEEDED' });
    expect(await site.call('readSession')).toMatchObject({ role: 'look', by: 'network' });
  });

  it('who knows it may change things, from anywhere', async () => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    expect(codeOf(await phone.logIn('larch-28'))).toBe('BC_PIN_WRONG');
    expect((await phone.logIn(` ${ownerPin} `)).json()).toMatchObject({
      role: 'own',
      by: 'log-in',
    });
    expect((await phone.makePlace()).statusCode).toBe(201);
    expect((await phone.look()).json()).toMatchObject({ mayWrite: true, writing: 'granted' });
    expect((await device('192.168.1.21').look()).json()).toMatchObject({
      mayWrite: false,
      writing: 'after-log-in',
    });
  });

  it('its cookie is out of reach of scripts and of other sites', async () => {
    const { device } = await siteWithPin();
    const reply = await device('192.168.1.20').logIn(ownerPin);
    for (const cookie of [reply.headers['set-cookie']].flat()) {
      expect(cookie).toMatch(/; HttpOnly; SameSite=Strict$/);
    }
    expect(reply.cookies).toHaveLength(2);
  });

  it('a log-in ends when it is not used, and after its longest time in any case', async () => {
    const { device, time } = await siteWithPin();
    const idle = device('192.168.1.20');
    await idle.logIn(ownerPin);
    time.ms += 23 * 3_600_000;
    expect((await idle.makePlace()).statusCode).toBe(201);
    time.ms += 23 * 3_600_000;
    expect((await idle.makePlace('Loft')).statusCode).toBe(201);
    time.ms += 25 * 3_600_000;
    expect(codeOf(await idle.makePlace('Barn'))).toBe('BC_LOGIN_NEEDED');
    const busy = device('192.168.1.21');
    await busy.logIn(ownerPin);
    for (let day = 0; day < 31; day++) {
      time.ms += 23 * 3_600_000;
      await busy.look();
    }
    time.ms += 20 * 3_600_000;
    expect(codeOf(await busy.makePlace('Attic'))).toBe('BC_LOGIN_NEEDED');
  });

  it('a second PIN records work and leaves the settings alone', async () => {
    const { device } = await siteWithPin();
    const owner = device('192.168.1.20');
    await owner.logIn(ownerPin);
    const setPin = (payload: object) => owner.send({ method: 'POST', url: '/api/v1/pin', payload });
    expect(codeOf(await setPin({ pin: ownerPin, role: 'operate' }))).toBe('BC_REQUEST_INVALID');
    expect((await setPin({ pin: operatorPin, role: 'operate' })).json()).toMatchObject({
      role: 'own',
      operatorPinSet: true,
    });
    const crew = device('192.168.1.30');
    expect((await crew.logIn(operatorPin)).json()).toMatchObject({ role: 'operate' });
    expect((await crew.makePlace()).statusCode).toBe(201);
    expect(codeOf(await crew.devices())).toBe('BC_ROLE_TOO_SMALL');
    await owner.send({ method: 'DELETE', url: '/api/v1/pin/operate' });
    expect(codeOf(await crew.makePlace('Loft'))).toBe('BC_LOGIN_NEEDED');
    expect(codeOf(await crew.logIn(operatorPin))).toBe('BC_PIN_WRONG');
  });

  it('a changed PIN logs out who came in by the old one, and needs the old one', async () => {
    const { device } = await siteWithPin();
    const [owner, stolen] = [device('192.168.1.20'), device('192.168.1.21')];
    await owner.logIn(ownerPin);
    await stolen.logIn(ownerPin);
    const change = (currentPin: string) =>
      owner.send({
        method: 'POST',
        url: '/api/v1/pin',
        payload: { pin: 'spruce-31', currentPin },
      });
    expect(codeOf(await change('larch-28'))).toBe('BC_PIN_WRONG');
    expect((await change(ownerPin)).statusCode).toBe(201);
    expect((await owner.makePlace()).statusCode).toBe(201);
    expect(codeOf(await stolen.makePlace('Loft'))).toBe('BC_LOGIN_NEEDED');
    expect(codeOf(await stolen.logIn(ownerPin))).toBe('BC_PIN_WRONG');
  });

  it('logging out ends this device, and logging out everywhere ends all', async () => {
    const { device } = await siteWithPin();
    const [a, b] = [device('192.168.1.20'), device('192.168.1.21')];
    await a.logIn(ownerPin);
    await b.logIn(ownerPin);
    const kept = new Map(a.cookies);
    await a.send({ method: 'DELETE', url: '/api/v1/session' });
    expect(codeOf(await a.makePlace())).toBe('BC_LOGIN_NEEDED');
    // Also with the cookie that someone copied before.
    for (const [name, value] of kept) a.cookies.set(name, value);
    expect(codeOf(await a.makePlace())).toBe('BC_LOGIN_NEEDED');
    expect((await b.devices()).json()).toHaveLength(2);
    expect((await b.send({ method: 'DELETE', url: '/api/v1/devices' })).json()).toEqual([]);
    expect(codeOf(await b.makePlace())).toBe('BC_LOGIN_NEEDED');
  });
});

describe('a wall tablet', () => {
  it('is paired by a code that is good once, looks, and can be sent away', async () => {
    const { device } = await siteWithPin('log-in');
    const owner = device('192.168.1.20');
    await owner.logIn(ownerPin);
    const made = await owner.send({
      method: 'POST',
      url: '/api/v1/tablets/code',
      payload: { name: 'North wall' },
    });
    const { code } = made.json();
    const pair = (who: ReturnType<typeof device>, typed: string) =>
      who.send({ method: 'POST', url: '/api/v1/tablets', payload: { code: typed } });
    const tablet = device('192.168.1.40');
    expect(codeOf(await tablet.look())).toBe('BC_LOGIN_NEEDED');
    expect(codeOf(await pair(tablet, 'AAAA-AAAA'))).toBe('BC_PIN_WRONG');
    expect((await pair(tablet, code)).json()).toMatchObject({ role: 'look', device: 'North wall' });
    expect((await tablet.look()).statusCode).toBe(200);
    expect(codeOf(await tablet.makePlace())).toBe('BC_ROLE_TOO_SMALL');
    expect(codeOf(await pair(device('192.168.1.41'), code))).toBe('BC_PIN_WRONG');
    // Logging out everywhere is about PINs; the tablet on the wall stays.
    await owner.send({ method: 'DELETE', url: '/api/v1/devices' });
    expect((await tablet.look()).statusCode).toBe(200);
    await owner.logIn(ownerPin);
    const [{ id }] = (await owner.devices())
      .json()
      .filter((one: { kind: string }) => one.kind === 'tablet');
    await owner.send({ method: 'DELETE', url: `/api/v1/devices/${id}` });
    expect(codeOf(await tablet.look())).toBe('BC_LOGIN_NEEDED');
  });

  it('is forgotten with all others when the owner says so', async () => {
    const { device } = await siteWithPin('log-in');
    const owner = device('192.168.1.20');
    await owner.logIn(ownerPin);
    const payload = { name: 'North wall' };
    const made = await owner.send({ method: 'POST', url: '/api/v1/tablets/code', payload });
    const tablet = device('192.168.1.40');
    await tablet.send({
      method: 'POST',
      url: '/api/v1/tablets',
      payload: { code: made.json().code },
    });
    await owner.send({ method: 'DELETE', url: '/api/v1/devices?tablets=true' });
    expect(codeOf(await tablet.look())).toBe('BC_LOGIN_NEEDED');
  });
});

describe('each route lets in its role and those above it, and nobody else', () => {
  /** What asks for more or less than its method says, told once more here. */
  const explicit: Partial<Record<RouteName, string>> = {
    health: 'anyone',
    readSession: 'anyone',
    logIn: 'anyone',
    logOut: 'anyone',
    setPin: 'anyone',
    pairTablet: 'anyone',
    removePin: 'own',
    listDevices: 'own',
    endDevice: 'own',
    endDevices: 'own',
    createPairingCode: 'own',
    readMqttAccess: 'own',
    changeMqttMode: 'own',
    createMqttLogin: 'own',
    changeMqttLogin: 'own',
    removeMqttLogin: 'own',
    listSettings: 'operate',
    changeSettings: 'own',
  };

  it('every route that says a role of its own is listed', () => {
    for (const name of names) {
      const { method, role }: Route = routes[name];
      const byMethod = method === 'GET' ? 'look' : 'operate';
      expect(role ?? byMethod, name).toBe(explicit[name] ?? byMethod);
    }
  });

  it.each(['nobody', ...roles] as const)('for %s', async (who) => {
    const { site, access, device } = await siteWithPin('log-in');
    const owner = device('192.168.1.20');
    await owner.logIn(ownerPin);
    const payload = { pin: operatorPin, role: 'operate' };
    await owner.send({ method: 'POST', url: '/api/v1/pin', payload });
    const asker = device('192.168.1.30');
    if (who === 'own') await asker.logIn(ownerPin);
    if (who === 'operate') await asker.logIn(operatorPin);
    if (who === 'look') {
      const { code } = access.newPairingCode('Wall');
      await asker.send({ method: 'POST', url: '/api/v1/tablets', payload: { code } });
    }
    const refusals = ['BC_LOGIN_NEEDED', 'BC_ROLE_TOO_SMALL'];
    for (const name of names) {
      // These two end the very log-in that walks.
      if (name === 'logOut' || name === 'endDevices') continue;
      const route: Route = routes[name];
      const reply = await asker.send({
        method: route.method,
        url: route.path.replace(':id', someId).replace(':part', someId).replace(':role', 'none'),
        // What is let through is refused for its body, and changes nothing.
        ...(route.body ? { payload: { colour: 'red' } } : {}),
      });
      const refused =
        reply.statusCode >= 400 && refusals.includes((reply.json() as { code: string }).code);
      const may = mayDo(who === 'nobody' ? null : who, neededRole(route));
      expect(!refused, `${name} for ${who}: ${reply.statusCode} ${reply.body.slice(0, 200)}`).toBe(
        may,
      );
    }
    expect(site.errors).toEqual([]);
  });
});
