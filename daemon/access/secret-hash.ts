import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto';

/** A hashed PIN or password with the parameters it was made with. */
export interface SecretHash {
  /** Base64. */
  salt: string;
  /** Base64. */
  hash: string;
  /** N of RFC 7914. */
  cost: number;
  /** r of RFC 7914. */
  block: number;
  /** p of RFC 7914. */
  parallel: number;
}

export interface HashCost {
  readonly cost: number;
  readonly block: number;
  readonly parallel: number;
}

/** For what a person thinks up: 32 MiB, three rounds. **Source:** OWASP Password Storage Cheat Sheet, from memory. */
export const pinCost: HashCost = { cost: 2 ** 15, block: 8, parallel: 3 };
/** For passwords of 100 and more random bits, which nobody guesses at any speed. */
export const passwordCost: HashCost = { cost: 2 ** 12, block: 8, parallel: 1 };

const hashBytes = 32;

/** Makes and checks hashes, a few at a time: a flood of tries cannot take all memory and threads. */
export interface SecretHasher {
  make(secret: string, cost: HashCost): Promise<SecretHash>;
  /** False also where there is no hash; that takes as long. */
  matches(secret: string, hash: SecretHash | null): Promise<boolean>;
}

/** Thrown when too many wait already. */
export class HasherBusy extends Error {
  override name = 'HasherBusy';
}

/**
 * @param atOnce - hashes that are made at the same time
 * @param mostWaiting - further ones are refused with `HasherBusy`
 */
export function secretHasher(atOnce = 1, mostWaiting = 200): SecretHasher {
  let running = 0;
  const waiting: (() => void)[] = [];

  async function inTurn<T>(act: () => Promise<T>): Promise<T> {
    if (running >= atOnce) {
      if (waiting.length >= mostWaiting) throw new HasherBusy('Too many log-ins wait already.');
      // Whoever ends hands its turn over, so that nobody slips in between.
      await new Promise<void>((resolve) => waiting.push(resolve));
    } else running++;
    try {
      return await act();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else running--;
    }
  }

  return {
    make: (secret, cost) =>
      inTurn(async () => {
        const salt = randomBytes(16);
        const hash = await derive(secret, salt, cost);
        return { salt: salt.toString('base64'), hash: hash.toString('base64'), ...cost };
      }),
    matches: (secret, hash) =>
      inTurn(async () => {
        const { salt, cost, block, parallel } = hash ?? { salt: '', ...pinCost };
        const made = await derive(secret, Buffer.from(salt, 'base64'), { cost, block, parallel });
        return hash !== null && timingSafeEqual(made, Buffer.from(hash.hash, 'base64'));
      }),
  };
}

function derive(secret: string, salt: Buffer, { cost, block, parallel }: HashCost) {
  const options: ScryptOptions = {
    N: cost,
    r: block,
    p: parallel,
    // 128·N·r and some room. RFC 7914, section 6.
    maxmem: 128 * cost * block * 2,
  };
  return new Promise<Buffer>((resolve, reject) => {
    scrypt(secret, salt, hashBytes, options, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
}
