import { lookup } from 'node:dns';
import { request as requestHttp } from 'node:http';
import { request as requestHttps } from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import { addressRefusal, webhookRefusal } from '../rules/webhook-target.ts';
import { type Channel, entryOut } from './channel.ts';
import { signedHeaders } from './http-signature.ts';

export interface WebhookParts {
  url: string;
  secret: string;
  timeoutMs: number;
  site: string;
  /** UTC epoch ms, for the signature. */
  now: () => number;
}

/**
 * Posts notices as signed JSON. No redirect is followed, and the address that the name leads to is
 * judged at the very connection that is then used, so that a name cannot turn in between.
 */
export function webhookChannel({ url, secret, timeoutMs, site, now }: WebhookParts): Channel {
  const target = new URL(url);
  const refusal = webhookRefusal(url);
  if (refusal !== null) throw new Error(`notices.webhook.url cannot be used. ${refusal}`);
  const start = target.protocol === 'https:' ? requestHttps : requestHttp;

  return {
    name: 'webhook',
    send: ({ message, title, text, voice }, signal) =>
      new Promise((done, lost) => {
        const { body } = message;
        const payload = JSON.stringify({
          schema: 1,
          id: message.id,
          site,
          kind: body.kind,
          createdAt: new Date(message.createdAt).toISOString(),
          title,
          text,
          notices: body.kind === 'notices' ? body.entries.map((one) => entryOut(one, voice)) : [],
        });
        const signed = { url: target.href, body: payload, idempotencyKey: message.id };
        const patience = AbortSignal.any([signal, AbortSignal.timeout(timeoutMs)]);
        const request = start(
          target,
          {
            method: 'POST',
            lookup: judgedLookup,
            signal: patience,
            headers: {
              'content-type': 'application/json',
              'content-length': Buffer.byteLength(payload),
              ...signedHeaders(secret, signed, now()),
            },
          },
          (response) => {
            response.resume();
            const status = response.statusCode ?? 0;
            if (status >= 200 && status < 300) done();
            else lost(new Error(answerWords(status)));
            response.once('end', () => request.destroy());
          },
        );
        request.once('error', (cause: NodeJS.ErrnoException) =>
          lost(new Error(failureWords(cause, patience), { cause })),
        );
        request.end(payload);
      }),
  };
}

/** Resolves a name, and refuses the connection where it leads somewhere no webhook may go. */
export const judgedLookup: LookupFunction = (hostname, options, callback) => {
  lookup(hostname, { ...options, all: true }, (failure, addresses) => {
    if (failure) {
      callback(failure, '', 0);
      return;
    }
    const refused = addresses.find(({ address }) => addressRefusal(address) !== null);
    if (refused) {
      const why = addressRefusal(refused.address);
      callback(new Error(`the name leads to ${refused.address}: ${why}`), '', 0);
      return;
    }
    if (options.all === true) {
      callback(null, addresses);
      return;
    }
    const [first] = addresses;
    callback(null, first?.address ?? '', first?.family ?? isIP(first?.address ?? ''));
  });
};

function answerWords(status: number): string {
  if (status >= 300 && status < 400) {
    return `the receiver answered with ${status}; redirects are not followed`;
  }
  return `the receiver answered with ${status}`;
}

function failureWords(cause: NodeJS.ErrnoException, patience: AbortSignal): string {
  if (patience.aborted && (patience.reason as Error)?.name === 'TimeoutError') {
    return 'the receiver did not answer in time';
  }
  if (cause.code) return `the receiver is out of reach (${cause.code})`;
  return cause.message;
}
