import { describe, expect, it } from 'vitest';
import { codeOf, ownerPin, siteWithPin } from '../http/access-site.ts';
import { build, moment } from '../http/built-site.ts';

describe('something that was sent before is sent again', () => {
  it('a reading with its own time counts once, and its value cannot be changed by that', async () => {
    const site = await build();
    await site.hear('n1', 'air-temperature', [[site.now - 1000, 20]]);
    await site.hear('n1', 'air-temperature', [[site.now - 1000, 20]]);
    await site.hear('n1', 'air-temperature', [[site.now - 1000, 35]]);
    const query = {
      sensor: 'n1',
      quantity: 'air-temperature',
      from: moment(site.now - 3_600_000),
      to: moment(site.now),
    };
    const { value } = await site.call('series', { query });
    expect(value).toEqual([20]);
  });

  it('a record that was made under its own id is made once', async () => {
    const site = await build();
    const body = { id: '019a0000-0000-7000-8000-000000000077', name: 'Shed', kind: 'room' };
    await site.call('createPlace', { body });
    await site.call('createPlace', { body });
    expect(await site.call('listPlaces')).toHaveLength(1);
    const other = { ...body, name: 'Other' };
    expect(await site.refused('createPlace', { body: other })).toMatchObject({
      code: 'BC_ID_TAKEN',
    });
  });

  it('a cookie that was copied ends with its log-in', async () => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    await phone.logIn(ownerPin);
    const copied = new Map(phone.cookies);
    await phone.send({ method: 'DELETE', url: '/api/v1/session' });
    const thief = device('192.168.1.66');
    for (const [name, value] of copied) thief.cookies.set(name, value);
    expect(codeOf(await thief.makePlace())).toBe('BC_LOGIN_NEEDED');
  });

  it('a cookie whose text was changed is none', async () => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    await phone.logIn(ownerPin);
    for (const [name, value] of phone.cookies) {
      const parts = value.split('.');
      // Seen later than it was: it would never run out.
      parts[2] = (Number.parseInt(parts[2] ?? '', 36) + 9e12).toString(36);
      phone.cookies.set(name, parts.join('.'));
    }
    expect(codeOf(await phone.makePlace())).toBe('BC_LOGIN_NEEDED');
  });

  it('the mark of a known device lets nobody in', async () => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    await phone.logIn(ownerPin);
    const [session, known] = [...phone.cookies].sort(([a], [b]) => a.length - b.length);
    const thief = device('192.168.1.66');
    thief.cookies.set(session?.[0] ?? '', known?.[1] ?? '');
    expect(codeOf(await thief.makePlace())).toBe('BC_LOGIN_NEEDED');
  });
});
