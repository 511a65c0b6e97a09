import type { FastifyReply, FastifyRequest } from 'fastify';
import type { AccessPort, LetIn, Tokens } from './access-port.ts';

/** What browsers allow at most. **Source:** RFC 6265bis (draft), section 5.5, from memory: 400 days. */
const longestSeconds = 34_560_000;

/** The cookies of ours in a request. */
export function tokensOf(request: FastifyRequest, access: AccessPort): Tokens {
  const name = access.cookieName();
  const given = new Map<string, string>();
  for (const pair of (request.headers.cookie ?? '').split(';')) {
    const [key = '', value] = pair.split('=', 2);
    // The first of a name: RFC 6265, section 5.4, puts the one with the longer path there.
    if (value !== undefined && !given.has(key.trim())) given.set(key.trim(), value.trim());
  }
  return { session: given.get(name), known: given.get(`${name}-known`) };
}

/** Gives a browser the tokens of a device that was let in. */
export function giveTokens(
  reply: FastifyReply,
  access: AccessPort,
  { session, known }: Pick<LetIn, 'session' | 'known'>,
): void {
  const name = access.cookieName();
  setCookie(reply, name, session, longestSeconds);
  if (known !== null) setCookie(reply, `${name}-known`, known, longestSeconds);
}

/** Takes the log-in from a browser; that it was logged in here once stays known. */
export function takeToken(reply: FastifyReply, access: AccessPort): void {
  setCookie(reply, access.cookieName(), '', 0);
}

function setCookie(reply: FastifyReply, name: string, value: string, seconds: number): void {
  const secure = reply.request.protocol === 'https' ? '; Secure' : '';
  reply.header(
    'set-cookie',
    `${name}=${value}; Path=/; Max-Age=${seconds}; HttpOnly; SameSite=Strict${secure}`,
  );
}
