// Ends with 0 when the daemon on this computer answers, for whoever watches over a container. A port
// of its own, or TLS, is taken from the same variable as the daemon's.
import { get as getPlain } from 'node:http';
import { get as getTls } from 'node:https';

const port = (process.env.BOARDCURE_HTTP ?? '').split(':').at(-1) || '8080';
const where = { host: '127.0.0.1', port, path: '/healthz', timeout: 5000 };

/** @param {(options: object, answer: (reply: { statusCode?: number | undefined }) => void) => any} get */
const answers = (get) =>
  new Promise((resolve) => {
    // The certificate is for the shed's name, not for this address; nothing secret is said here.
    const request = get({ ...where, rejectUnauthorized: false }, (reply) =>
      resolve(reply.statusCode !== undefined && reply.statusCode < 500),
    );
    request.on('timeout', () => request.destroy());
    request.on('error', () => resolve(false));
  });

const isAlive = (await answers(getPlain)) || (await answers(getTls));
process.exit(isAlive ? 0 : 1);
