import { createHash, createHmac } from 'node:crypto';

/** What a request is known by when it is signed: each name as RFC 9421 has it, with its value. */
export type CoveredComponents = readonly (readonly [name: string, value: string])[];

export interface SignatureParameters {
  /** Seconds since the epoch. */
  created: number;
  keyId: string;
  /** Whether the algorithm is named; left out where both sides know it. */
  algorithm?: 'hmac-sha256';
}

/** The text that is signed, and the parameters as the header has them. **Source:** RFC 9421, section 2.5. */
export function signatureBase(covered: CoveredComponents, parameters: SignatureParameters) {
  const names = covered.map(([name]) => `"${name}"`).join(' ');
  const algorithm = parameters.algorithm === undefined ? '' : `;alg="${parameters.algorithm}"`;
  const input = `(${names});created=${parameters.created};keyid="${parameters.keyId}"${algorithm}`;
  const lines = covered.map(([name, value]) => `"${name}": ${value}`);
  return { input, base: [...lines, `"@signature-params": ${input}`].join('\n') };
}

/** HMAC with SHA-256 over the base, base64. **Source:** RFC 9421, section 3.3.3. */
export function hmacSignature(key: Uint8Array | string, base: string): string {
  return createHmac('sha256', key).update(base).digest('base64');
}

/** What stands in the header Content-Digest. **Source:** RFC 9530, section 2. */
export function contentDigest(body: string): string {
  return `sha-256=:${createHash('sha256').update(body).digest('base64')}:`;
}

/**
 * The headers that sign a post: method, address, body, its idempotency key and the time.
 *
 * @param key - shared with the receiver
 * @param at - UTC epoch ms
 */
export function signedHeaders(
  key: string,
  request: { url: string; body: string; idempotencyKey: string },
  at: number,
): Record<string, string> {
  const digest = contentDigest(request.body);
  const quotedKey = `"${request.idempotencyKey}"`;
  const { input, base } = signatureBase(
    [
      ['@method', 'POST'],
      ['@target-uri', request.url],
      ['content-digest', digest],
      ['idempotency-key', quotedKey],
    ],
    { created: Math.floor(at / 1000), keyId: 'boardcure', algorithm: 'hmac-sha256' },
  );
  return {
    'content-digest': digest,
    'idempotency-key': quotedKey,
    'signature-input': `sig1=${input}`,
    signature: `sig1=:${hmacSignature(key, base)}:`,
  };
}
