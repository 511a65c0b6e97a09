import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { accessFile } from '../../daemon/access/access-file.ts';
import type { Route } from '../../daemon/contract/route.ts';
import { type RouteName, routes } from '../../daemon/contract/routes.ts';
import { operatorPin, ownerPin, siteWithPin } from '../http/access-site.ts';

it('PINs, passwords, codes and keys are in no answer, no log and no file in the clear', async () => {
  const { site, device, access, mqttAccess, file, data } = await siteWithPin();
  const owner = device('192.168.1.20');
  await owner.logIn('larch-28');
  await owner.logIn(ownerPin);
  const second = { pin: operatorPin, role: 'operate' };
  await owner.send({ method: 'POST', url: '/api/v1/pin', payload: second });
  const { code } = access.newPairingCode('Wall');
  const { password } = await mqttAccess.make('rack-1', 'node', ['rack-1']);
  await mqttAccess.admit({
    client: 'c',
    username: 'rack-1',
    password: Buffer.from('a-wrong-password'),
    address: '192.168.1.50',
  });
  const { key, pins } = file.read();
  const secrets = [ownerPin, operatorPin, 'larch-28', 'a-wrong-password', password, code];
  const hashes = [key, pins.own?.hash, pins.own?.salt, pins.operate?.hash];
  const answers: string[] = [];
  for (const name of Object.keys(routes) as RouteName[]) {
    const { method, path }: Route = routes[name];
    if (method !== 'GET' || path.includes(':')) continue;
    answers.push((await owner.send({ url: path })).body);
  }
  answers.push((await owner.send({ url: '/api/v1/openapi.json' })).body);
  // By yes and no, so that a failure prints no hundred thousand letters.
  expect(answers.join('').includes('rack-1')).toBe(true);
  const told = answers.join('\n') + JSON.stringify(site.errors);
  for (const secret of [...secrets, ...hashes]) expect(told.includes(String(secret))).toBe(false);
  const kept = readFileSync(accessFile(data), 'utf8');
  for (const secret of secrets) expect(kept).not.toContain(secret);
});
