import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { accessFile, openAccessFile } from '../../daemon/access/access-file.ts';
import { pin } from '../../daemon/command/pin.ts';
import { deviceAt } from '../http/access-site.ts';
import { build } from '../http/built-site.ts';
import { dataFolder, openAccess } from './open-access.ts';

/** Runs the command as a person would, who types these lines one after the other. */
async function run(data: string, args: string[], typed: string[] = [], isTerminal = true) {
  const said: string[] = [];
  const code = await pin(
    [...args, '--data', data],
    {
      stdout: (line) => said.push(line),
      stderr: (line) => said.push(line),
      env: {},
      cwd: data,
      stop: new AbortController().signal,
    },
    { askSecret: async () => typed.shift() ?? null, isTerminal },
  );
  return { code, said: said.join('\n') };
}

describe('boardcure pin', () => {
  it('sets a PIN that the running daemon goes by at once, and opens it to whoever forgot theirs', async () => {
    const { access, data } = openAccess();
    const site = await build({ access });
    expect(access.state().pinSet).toBe(false);
    expect((await run(data, ['set'], ['larch-27', 'larch-27'])).code).toBe(0);
    const phone = deviceAt(site, '192.168.1.20');
    expect((await phone.logIn('larch-27')).statusCode).toBe(201);
    expect((await run(data, [], ['spruce-31'], false)).code).toBe(0);
    expect((await phone.makePlace()).statusCode).toBe(401);
    expect((await phone.logIn('spruce-31')).statusCode).toBe(201);
    expect((await run(data, ['remove'])).code).toBe(0);
    expect((await phone.makePlace()).statusCode).toBe(403);
    expect((await site.call('readSession')).by).toBe('this-computer');
  });

  it('sets and removes a second PIN once there is a first', async () => {
    const data = dataFolder();
    expect(await run(data, ['set-operator'], ['493816', '493816'])).toMatchObject({ code: 1 });
    await run(data, ['set'], ['larch-27', 'larch-27']);
    expect(await run(data, ['set-operator'], ['larch-27', 'larch-27'])).toMatchObject({ code: 1 });
    expect(await run(data, ['set-operator'], ['493816', '493816'])).toMatchObject({ code: 0 });
    expect((await run(data, ['status'])).said).toMatch(/PIN: set.*recording work: set/);
    await run(data, ['remove-operator']);
    expect((await run(data, ['status'])).said).toMatch(/PIN: set.*recording work: not set/);
  });

  it.each([
    ['a PIN that is too short', ['12a4']],
    ['a row of figures', ['123456']],
    ['one figure over and over', ['777777']],
    ['two that differ', ['larch-27', 'larch-28']],
    ['nothing', []],
  ])('refuses %s and changes nothing', async (_what, typed) => {
    const data = dataFolder();
    expect(await run(data, ['set'], [...typed])).toMatchObject({ code: 1 });
    expect(openAccessFile(accessFile(data)).read().pins.own).toBeNull();
  });

  it('takes no PIN from the command line, where others can read it', async () => {
    expect(await run(dataFolder(), ['larch-27'])).toMatchObject({ code: 2 });
  });

  it('keeps the PIN out of its words, and the file from everyone else', async () => {
    const data = dataFolder();
    const { said } = await run(data, ['set'], ['larch-27', 'larch-27']);
    expect(said).not.toContain('larch-27');
    expect(statSync(accessFile(data)).mode & 0o777).toBe(0o600);
  });
});

describe('the file of PINs', () => {
  it('that cannot be read is not taken for missing: that would open the site', () => {
    const data = dataFolder();
    writeFileSync(join(data, 'access.json'), '{"pins": {"own": "larch-27"');
    expect(() => openAccessFile(accessFile(data))).toThrow(/cannot be read/);
    expect(() => openAccessFile(accessFile(data))).not.toThrow(/larch/);
  });

  it('keeps every one of many changes at once', async () => {
    const data = dataFolder();
    const [a, b] = [openAccessFile(accessFile(data)), openAccessFile(accessFile(data))];
    const device = (id: string) => ({
      id,
      kind: 'tablet' as const,
      role: 'look' as const,
      name: id,
      since: 1,
      seenAt: null,
    });
    await Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        (i % 2 === 0 ? a : b).change((kept) => ({
          ...kept,
          devices: [...kept.devices, device(`d${i}`)],
        })),
      ),
    );
    expect(openAccessFile(accessFile(data)).read().devices).toHaveLength(20);
  });
});
