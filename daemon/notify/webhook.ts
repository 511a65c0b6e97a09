import { lookup } from 'node:dns';
import { request as requestHttp } from 'node:http';
import { request as requestHttps } from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import type { Said } from '../contract/sentence.ts';
import { addressFault, webhookRefusal } from '../rules/webhook-target.ts';
import { sentence } from '../wording/english.ts';
import { SaidError } from '../wording/said-error.ts';
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
            else lost(new SaidError(answerSaid(status)));
            response.once('end', () => request.destroy());
          },
        );
        request.once('error', (cause: NodeJS.ErrnoException) =>
          lost(cause instanceof SaidError ? cause : failureOf(cause, patience)),
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
    for (const { address } of addresses) {
      const fault = addressFault(address);
      if (fault === null) continue;
      callback(new SaidError(sentence('webhook-failed/address', { address, fault })), '', 0);
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

function answerSaid(status: number): Said {
  const isRedirect = status >= 300 && status < 400;
  return sentence(isRedirect ? 'webhook-failed/redirect' : 'webhook-failed/answer', { status });
}

function failureOf(cause: NodeJS.ErrnoException, patience: AbortSignal): Error {
  if (patience.aborted && (patience.reason as Error)?.name === 'TimeoutError') {
    return new SaidError(sentence('webhook-failed/late', {}), { cause });
  }
  if (cause.code === undefined) return cause;
  return new SaidError(sentence('webhook-failed/away', { because: cause.code }), { cause });
}
