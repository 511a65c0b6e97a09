import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Device, Session } from '../../contract/access.ts';
import { toMoment } from '../../contract/moment.ts';
import { BoardcureError } from '../../contract/problem.ts';
import { roleOf } from '../../rules/role.ts';
import { sentence } from '../../wording/english.ts';
import { type Asker, askerOf } from '../access-gate.ts';
import type { AccessDevice, AccessPort, Caller, LetIn } from '../access-port.ts';
import { register } from '../register-route.ts';
import { giveTokens, takeToken, tokensOf } from '../session-cookies.ts';

/** Log-ins, PINs and devices. */
export function accessRoutes(app: FastifyInstance, { access }: { access: AccessPort }): void {
  const callerOf = (request: FastifyRequest): Caller => ({
    address: request.socket.remoteAddress ?? '',
    known: tokensOf(request, access).known,
    isFromHere: askerOf(request, access).isFromHere,
  });

  function letIn(reply: FastifyReply, tokens: LetIn): Session {
    giveTokens(reply, access, tokens);
    const { device } = tokens;
    return {
      role: device.role,
      by: device.kind === 'tablet' ? 'pairing' : 'log-in',
      device: device.name,
      expiresAt: null,
      ...access.state(),
    };
  }

  register(app, 'readSession', (_call, request) => sessionOf(askerOf(request, access), access));

  register(app, 'logIn', async ({ body }, request, reply) => {
    const name = body.device ?? browserName(request);
    return letIn(reply, await access.logIn(body.pin, name, callerOf(request)));
  });

  register(app, 'logOut', async (_call, request, reply) => {
    const asker = askerOf(request, access);
    if (asker.device !== null) await access.endDevice(asker.device.id);
    takeToken(reply, access);
    const { isFromHere } = asker;
    const role = roleOf({ carried: null, isFromHere }, access.state());
    return sessionOf({ isFromHere, device: null, role }, access);
  });

  register(app, 'setPin', async ({ body }, request, reply) => {
    const change = {
      pin: body.pin,
      role: body.role,
      currentPin: body.currentPin,
      setUpCode: body.setUpCode,
      deviceName: body.device ?? browserName(request),
      device: askerOf(request, access).device,
    };
    return letIn(reply, await access.setPin(change, callerOf(request)));
  });

  register(app, 'removePin', async (_call, request) => {
    await access.removeOperatorPin();
    return sessionOf(askerOf(request, access), access);
  });

  const listed = (asker: Asker): Device[] =>
    access.devices().map((device) => deviceReply(device, asker.device?.id ?? null));

  register(app, 'listDevices', (_call, request) => listed(askerOf(request, access)));

  register(app, 'endDevice', async ({ params }, request) => {
    const asker = askerOf(request, access);
    if (!(await access.endDevice(params.id))) {
      const said = sentence('no-such-thing', { thing: 'device', id: params.id });
      throw new BoardcureError('BC_THING_UNKNOWN', said);
    }
    return listed(asker);
  });

  register(app, 'endDevices', async ({ query }, request, reply) => {
    const asker = askerOf(request, access);
    // Before the key is changed: the cookie’s name hangs on it.
    takeToken(reply, access);
    await access.endDevices(query.tablets === true);
    return listed(asker);
  });

  register(app, 'createPairingCode', ({ body }) => {
    const { code, expiresAt } = access.newPairingCode(body.name);
    return { code, name: body.name, expiresAt: toMoment(expiresAt) };
  });

  register(app, 'pairTablet', async ({ body }, request, reply) =>
    letIn(reply, await access.pairTablet(body.code, callerOf(request))),
  );
}

function sessionOf({ role, device, isFromHere }: Asker, access: AccessPort): Session {
  const by = () => {
    if (device !== null) return device.kind === 'tablet' ? 'pairing' : 'log-in';
    if (role === null) return 'nothing';
    return isFromHere && role === 'own' ? 'this-computer' : 'network';
  };
  return {
    role,
    by: by(),
    device: device?.name ?? null,
    expiresAt: toMoment(device?.expiresAt ?? null),
    ...access.state(),
  };
}

function deviceReply(device: AccessDevice, own: string | null): Device {
  return {
    id: device.id,
    kind: device.kind,
    role: device.role,
    name: device.name,
    since: toMoment(device.since),
    seenAt: toMoment(device.seenAt),
    isThis: device.id === own,
  };
}

/** What a device that was given no name is called in the list. */
const browserName = ({ headers }: FastifyRequest): string =>
  /Mobi/.test(headers['user-agent'] ?? '') ? 'A phone or tablet' : 'A computer';
