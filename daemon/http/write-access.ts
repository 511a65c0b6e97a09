import type { FastifyRequest } from 'fastify';

const loopbackAddress = /^(?:127(?:\.\d{1,3}){3}|::1|::ffff:127(?:\.\d{1,3}){3})$/;
const loopbackName = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])$/i;
/** Any of these says that somebody else’s request was passed on: RFC 7239, RFC 9110, or custom. */
const forwarding = /^(?:forwarded|via|x-forwarded(?:-.*)?|x-original-.*|x-real-ip|.*client-ip)$/;

/**
 * Whether a request comes from the computer itself: over loopback, under a name of it, not passed
 * on by a proxy, and not from a page of another origin.
 */
export function isFromHere(request: FastifyRequest): boolean {
  const { headers, socket } = request;
  if (!loopbackAddress.test(socket.remoteAddress ?? '')) return false;
  if (Object.keys(headers).some((name) => forwarding.test(name))) return false;
  if (!isLoopbackHost(headers.host)) return false;
  // A browser says whose page asks; another port of this computer is another site’s page.
  const asker = headers['sec-fetch-site'];
  if (asker !== undefined && asker !== 'same-origin' && asker !== 'none') return false;
  const { origin } = headers;
  if (origin === undefined) return true;
  return URL.canParse(origin) && new URL(origin).host === headers.host;
}

function isLoopbackHost(host: string | undefined): boolean {
  const name = host?.replace(/:\d{1,5}$/, '');
  return name !== undefined && loopbackName.test(name);
}
