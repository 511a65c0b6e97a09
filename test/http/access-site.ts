import type { InjectOptions, LightMyRequestResponse } from 'fastify';
import { openAccess } from '../access/open-access.ts';
import { build, problemOf } from './built-site.ts';

export const ownerPin = 'larch-27';
export const operatorPin = '493816';

/** A device on the network with a browser that keeps its cookies and sends what a page of ours does. */
export function deviceAt(
  site: Awaited<ReturnType<typeof build>>,
  remoteAddress: string,
  headers: Record<string, string> = {},
) {
  const cookies = new Map<string, string>();
  async function send(options: InjectOptions): Promise<LightMyRequestResponse> {
    const cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const reply = await site.app.inject({
      remoteAddress,
      ...options,
      headers: {
        host: '192.168.1.5:8080',
        'x-boardcure-request': '1',
        ...(cookie === '' ? {} : { cookie }),
        ...headers,
        ...options.headers,
      },
    });
    for (const { name, value, maxAge } of reply.cookies) {
      if (maxAge === 0) cookies.delete(name);
      else cookies.set(name, value);
    }
    return reply;
  }
  return {
    cookies,
    send,
    logIn: (pin: string) => send({ method: 'POST', url: '/api/v1/session', payload: { pin } }),
    makePlace: (name = 'Shed') =>
      send({ method: 'POST', url: '/api/v1/places', payload: { name, kind: 'room' } }),
    look: () => send({ url: '/api/v1/overview' }),
    devices: () => send({ url: '/api/v1/devices' }),
  };
}

/** A site with a PIN for its owner, and its time and pauses at hand. */
export async function siteWithPin(look: 'open' | 'log-in' = 'open') {
  const opened = openAccess({ look });
  const site = await build({ access: opened.access, mqttAccess: opened.mqttAccess });
  const reply = await site.ask({
    method: 'POST',
    url: '/api/v1/pin',
    payload: { pin: ownerPin },
  });
  if (reply.statusCode !== 201) throw new Error(reply.body);
  return { ...opened, site, device: (address: string) => deviceAt(site, address) };
}

/** The code of a refusal. */
export const codeOf = (reply: LightMyRequestResponse): string => problemOf(reply).code;
