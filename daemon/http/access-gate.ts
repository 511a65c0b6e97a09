import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { NeededRole, Role } from '../contract/role.ts';
import type { Method } from '../contract/route.ts';
import { mayDo, neededRole, roleOf } from '../rules/role.ts';
import { isOwnName, isOwnOrigin } from '../rules/site-name.ts';
import { sentence } from '../wording/english.ts';
import type { AccessPort, Carried } from './access-port.ts';
import { sendProblem } from './problem-reply.ts';
import { giveTokens, tokensOf } from './session-cookies.ts';
import { isFromHere } from './write-access.ts';

declare module 'fastify' {
  interface FastifyContextConfig {
    /** What the route asks of its callers. */
    role?: NeededRole;
  }
}

/** Who asks, and what that allows. */
export interface Asker {
  role: Role | null;
  device: Carried | null;
  isFromHere: boolean;
}

export interface GateParts {
  access: AccessPort;
  /** Names of the computer and of the settings; IP addresses need none. */
  names: readonly string[];
}

/** A form of another site cannot send it, nor can a script without being asked whether it may. */
export const requestHeader = 'x-boardcure-request';

/** Who a request comes from, looked up anew each time: access can be taken while a page is open. */
export function askerOf(request: FastifyRequest, access: AccessPort): Asker {
  const device = access.carried(tokensOf(request, access));
  const here = isFromHere(request);
  const role = roleOf({ carried: device?.role ?? null, isFromHere: here }, access.state());
  return { role, device, isFromHere: here };
}

/** Lets a request through to its route only when it may; before its body is read. */
export function guardRoutes(app: FastifyInstance, { access, names }: GateParts): void {
  app.addHook('onRequest', async (request, reply) => {
    const { host, origin } = request.headers;
    const changes = request.method !== 'GET' && request.method !== 'HEAD';
    if (!isOwnName(host, names)) {
      // A change under a foreign name was always refused with this code.
      if (changes) return refuseChange(reply);
      return sendProblem(reply, 'BC_HOST_UNKNOWN', sentence('asked-as', { host: shortened(host) }));
    }
    const asker = askerOf(request, access);
    if (asker.device?.renewed) {
      giveTokens(reply, access, { session: asker.device.renewed, known: null });
    }
    if (changes && asker.device !== null) {
      const own = isOwnOrigin(origin, host, request.headers['sec-fetch-site'] as string);
      if (!own || request.headers[requestHeader] === undefined) {
        return sendProblem(
          reply,
          'BC_REQUEST_FOREIGN',
          own
            ? `A change by a logged-in device carries the header ${requestHeader}.`
            : 'A change by a logged-in device has to come from a page of this daemon.',
        );
      }
    }
    const needed = neededBy(request);
    if (mayDo(asker.role, needed)) return;
    if (asker.device !== null) {
      return sendProblem(reply, 'BC_ROLE_TOO_SMALL', sentence('role-needed', { role: needed }));
    }
    if (!access.state().pinSet && changes) return refuseChange(reply);
    // RFC 9110, section 11.6.1, wants a challenge; browsers ask nobody on account of this one.
    reply.header('www-authenticate', 'Boardcure-Session');
    return sendProblem(reply, 'BC_LOGIN_NEEDED', sentence('not-open', {}));
  });
}

const refuseChange = (reply: FastifyReply) =>
  sendProblem(reply, 'BC_WRITE_NOT_ALLOWED', sentence('not-from-here', {}));

const shortened = (host: string | undefined): string => (host ?? '').slice(0, 100);

/** What a route says; what is no route of the contract is asked for what its kind would be. */
function neededBy(request: FastifyRequest): NeededRole {
  const said = request.is404 ? undefined : request.routeOptions.config?.role;
  if (said !== undefined) return said;
  const method = request.method === 'HEAD' ? 'GET' : request.method;
  // The pages themselves hold nothing of the site, and one of them is where one logs in.
  if (method === 'GET' && !/^\/(?:api\/|metrics)/.test(request.url)) return 'anyone';
  return neededRole({ method: method as Method });
}
