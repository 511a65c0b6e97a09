import { describe, expect, it } from 'vitest';
import { codeOf, deviceAt, ownerPin, siteWithPin } from '../http/access-site.ts';
import { fromHere } from '../http/built-site.ts';

describe('someone who guesses at the PIN', () => {
  it('waits after five, also with the right one', async () => {
    const { device, time } = await siteWithPin();
    const attacker = device('192.168.1.66');
    for (let i = 0; i < 5; i++) {
      expect(codeOf(await attacker.logIn(`guess-${i}`))).toBe('BC_PIN_WRONG');
    }
    expect(codeOf(await attacker.logIn(ownerPin))).toBe('BC_TRIES_EXHAUSTED');
    time.ms += 30_000;
    expect((await attacker.logIn(ownerPin)).statusCode).toBe(201);
  });

  it('gets no further with many tries at once', async () => {
    const { device } = await siteWithPin();
    const attacker = device('192.168.1.66');
    const replies = await Promise.all(
      Array.from({ length: 40 }, (_, i) => attacker.logIn(`guess-${i}`)),
    );
    const tried = replies.filter((reply) => codeOf(reply) === 'BC_PIN_WRONG');
    expect(tried.length).toBeLessThanOrEqual(5);
  });

  it('shuts nobody else out: not a device with a log-in, not one that was here before, not the computer', async () => {
    const { site, device } = await siteWithPin();
    const [owner, former] = [device('192.168.1.66'), device('192.168.1.66')];
    await owner.logIn(ownerPin);
    await former.logIn(ownerPin);
    await former.send({ method: 'DELETE', url: '/api/v1/session' });
    const attacker = device('192.168.1.66');
    for (let i = 0; i < 30; i++) await attacker.logIn(`guess-${i}`);
    expect(codeOf(await attacker.logIn(ownerPin))).toBe('BC_TRIES_EXHAUSTED');
    // All of them from the very address that hammers.
    expect((await owner.makePlace()).statusCode).toBe(201);
    expect((await former.logIn(ownerPin)).statusCode).toBe(201);
    const computer = deviceAt(site, fromHere.remoteAddress, fromHere.headers);
    expect((await computer.logIn(ownerPin)).statusCode).toBe(201);
    expect((await device('192.168.1.21').logIn(ownerPin)).statusCode).toBe(201);
  });

  it('with hundreds of addresses slows down strangers and refuses none that is new', async () => {
    const { device, time } = await siteWithPin();
    for (let i = 0; i < 200; i++) await device(`10.0.${i}.1`).logIn('guess-1');
    expect(time.pauses.at(-1)).toBe(8000);
    expect((await device('192.168.1.21').logIn(ownerPin)).statusCode).toBe(201);
  });

  it('has one source in a whole IPv6 network', async () => {
    const { device } = await siteWithPin();
    for (let i = 0; i < 5; i++) await device(`2001:db8:0:1::${i + 1}`).logIn('guess-1');
    expect(codeOf(await device('2001:db8:0:1:aaaa::1').logIn(ownerPin))).toBe('BC_TRIES_EXHAUSTED');
  });
});
