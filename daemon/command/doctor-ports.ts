import { get as httpGet } from 'node:http';
import { get as httpsGet } from 'node:https';
import { createServer } from 'node:net';
import { type Finding, look, ok, wrong } from './doctor-finding.ts';

export interface PortFacts {
  readonly about: 'pages' | 'broker';
  /** The flag that chooses another. */
  readonly flag: '--http' | '--mqtt';
  readonly host: string;
  readonly port: number;
  /** Whether a daemon works on the data folder. */
  readonly daemonRuns: boolean;
}

/** Who answers at a port: a daemon of ours, or what else in general words. */
export type Answerer =
  | { readonly kind: 'ours'; readonly reasons: readonly string[] }
  | {
      readonly kind: 'other';
      readonly words: string;
    };

const answerWithinMs = 3000;
/** More than a daemon says of itself, characters. */
const mostAnswer = 100_000;

/**
 * Looks whether a port is free for the daemon, or taken by whom.
 *
 * @param ask - finds out who answers there
 */
export async function lookAtPort(facts: PortFacts, ask: () => Promise<Answerer>): Promise<Finding> {
  const { about, flag, host, port, daemonRuns } = facts;
  const what = about === 'pages' ? 'the pages' : 'the embedded broker';
  const where = `Port ${port} for ${what}`;
  if (port === 0) return ok(about, `A free port is picked for ${what} at each start.`);
  const fault = await faultOfListening(host, port);
  switch (fault) {
    case null:
      return daemonRuns
        ? look(
            about,
            `${where} is free, though a daemon runs on the data folder: it uses another one.`,
            'Give doctor the flags that the daemon was started with.',
          )
        : ok(about, `${where} is free.`);
    case 'EADDRINUSE': {
      const who = await ask();
      if (who.kind === 'other') {
        const words = `${where} is taken by ${who.words}.`;
        return wrong(about, words, `Stop that program, or choose another port with ${flag}.`);
      }
      if (!daemonRuns) {
        return wrong(
          about,
          `${where} is taken by a Boardcure daemon that works on another data folder.`,
          `Stop it, choose another port with ${flag}, or name its folder with --data.`,
        );
      }
      return who.reasons.length === 0
        ? ok(about, `The running daemon answers at port ${port}.`)
        : look(
            about,
            `The running daemon answers at port ${port}, and says: ${who.reasons.join(' ')}`,
            'Do what it says.',
          );
    }
    case 'EACCES':
      return wrong(
        about,
        `${where} may not be used by this user.`,
        `Choose a port from 1024 on with ${flag}.`,
      );
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return wrong(
        about,
        `${host} is not an address of this computer.`,
        `Choose another with ${flag}; 0.0.0.0 stands for all of them.`,
      );
    default:
      return wrong(about, `${where} cannot be used: ${fault}.`, `Choose another with ${flag}.`);
  }
}

function faultOfListening(host: string, port: number): Promise<string | null> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', (cause: NodeJS.ErrnoException) => resolve(cause.code ?? cause.message));
    server.listen({ host, port, exclusive: true }, () => server.close(() => resolve(null)));
  });
}

/** The address to reach what listens on one: that of all addresses is none to connect to. */
export function reachable(host: string): string {
  if (host === '0.0.0.0' || host === '') return '127.0.0.1';
  if (host === '::') return '[::1]';
  return host.includes(':') ? `[${host}]` : host;
}

/**
 * Who serves pages at a port.
 *
 * @param overTls - a certificate is not checked: a made one is known to no computer, and nothing
 *   secret is sent
 */
export async function whoServesPages(
  host: string,
  port: number,
  overTls: boolean,
): Promise<Answerer> {
  let text: string;
  try {
    text = await fetched(`${overTls ? 'https' : 'http'}://${reachable(host)}:${port}/healthz`);
  } catch {
    return { kind: 'other', words: 'a program that does not serve web pages' };
  }
  try {
    const body: unknown = JSON.parse(text);
    if (isHealth(body)) return { kind: 'ours', reasons: body.reasons.map(String) };
  } catch {
    // Whatever it sent, it was not what a daemon of ours says of itself.
  }
  return { kind: 'other', words: 'another program that serves web pages' };
}

function fetched(address: string): Promise<string> {
  const get = address.startsWith('https:') ? httpsGet : httpGet;
  return new Promise((resolve, reject) => {
    const signal = AbortSignal.timeout(answerWithinMs);
    const request = get(address, { signal, rejectUnauthorized: false }, (reply) => {
      let text = '';
      reply.setEncoding('utf8');
      reply.on('data', (piece: string) => {
        text += piece;
        if (text.length > mostAnswer) request.destroy(new Error('too much was answered'));
      });
      reply.on('end', () => resolve(text));
      reply.on('error', reject);
    });
    request.on('error', reject);
  });
}

function isHealth(body: unknown): body is { reasons: unknown[] } {
  if (typeof body !== 'object' || body === null) return false;
  return 'intake' in body && 'reasons' in body && Array.isArray(body.reasons);
}
