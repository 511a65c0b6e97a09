import { describe, expect, it } from 'vitest';
import type { SettingList } from '../../daemon/contract/setting.ts';
import { codeOf, operatorPin, ownerPin, siteWithPin } from './access-site.ts';
import { build, hourMs, withCoat } from './built-site.ts';

const wish = { settings: { 'cure.readyAt': 0.6 } };
const of = (list: SettingList, name: string) => list.settings.find((one) => one.name === name);

describe('settings over HTTP', () => {
  it('hold at once where they can: the verdict of a coat follows, and so does every page', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    const gate = async () => {
      const { coats } = await site.call('readBatch', { id: batch.id });
      return coats.find(({ id }) => id === coat.id)?.gates.turn;
    };
    // Until the job is about as likely as a throw of two dice.
    let probability = 0;
    while (probability < 0.65) {
      site.now += hourMs;
      await site.hear('n1', 'air-temperature', [[site.now, 20]]);
      probability = (await gate())?.probability ?? 1;
    }
    expect((await gate())?.verdict).toBe('test');
    const before = (await site.call('overview')).settingChanges;
    const list = await site.call('changeSettings', { body: wish });
    expect((await gate())?.verdict).toBe('ready');
    expect(of(list, 'cure.readyAt')).toMatchObject({ value: 0.6, from: 'chosen', waits: false });
    expect((await site.call('overview')).settingChanges).toBe((before ?? 0) + 1);
  });

  it('are told as waiting where only a start brings them in', async () => {
    const site = await build();
    const list = await site.call('changeSettings', { body: { settings: { 'cure.datumC': 4 } } });
    expect(of(list, 'cure.datumC')).toMatchObject({ value: 5, next: 4, waits: true });
  });

  it('are refused with a problem that points at the field', async () => {
    const site = await build();
    const body = { settings: { 'cure.readyAt': 'NaN', 'http.port': 80 } };
    const fixed = await site.refused('changeSettings', { body });
    expect(fixed).toMatchObject({
      ...{ code: 'BC_SETTING_FIXED', status: 409, pointer: '/settings/http.port' },
      errors: [{ detailSaid: { code: 'setting-by-hand', values: { name: 'http.port' } } }],
    });
    const wrong = await site.refused('changeSettings', {
      body: { settings: { 'cure.readyAt': 'NaN' } },
    });
    expect(wrong).toMatchObject({ code: 'BC_REQUEST_INVALID', pointer: '/settings/cure.readyAt' });
    expect(wrong.detail).toMatch(/^In the body: \/settings\/cure\.readyAt: /);
    expect(of(await site.call('listSettings'), 'cure.readyAt')?.value).toBe(0.9);
  });

  it('are the owner’s to choose, and tell at which device that was', async () => {
    const { site, device } = await siteWithPin();
    const owner = device('192.168.1.20');
    await owner.logIn(ownerPin);
    const pin = { pin: operatorPin, role: 'operate' };
    expect(
      (await owner.send({ method: 'POST', url: '/api/v1/pin', payload: pin })).statusCode,
    ).toBe(201);
    const operator = device('192.168.1.21');
    await operator.logIn(operatorPin);
    const change = { method: 'PATCH', url: '/api/v1/settings', payload: wish } as const;
    expect(codeOf(await operator.send(change))).toBe('BC_ROLE_TOO_SMALL');
    expect(codeOf(await device('192.168.1.22').send(change))).toBe('BC_LOGIN_NEEDED');
    const reply = await owner.send(change);
    expect(reply.statusCode).toBe(200);
    const chosen = of(reply.json<SettingList>(), 'cure.readyAt');
    expect(chosen?.chosenBy).toEqual(expect.any(String));
    expect(chosen?.source).toBe(chosen?.chosenBy);
    expect(site.errors).toEqual([]);
  });
});
