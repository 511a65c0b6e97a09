import { createHmac, timingSafeEqual } from 'node:crypto';

/** What a cookie says: which device, and when it was last seen. */
export interface Token {
  id: string;
  /** UTC epoch ms. */
  seenAt: number;
}

const form = /^([a-z]+)\.([0-9a-f-]{36})\.([0-9a-z]{1,11})\.([\w-]{43})$/;

/**
 * A token as text, signed.
 *
 * @param use - what it is good for; a token of one use is none of another
 * @param key - base64
 */
export function signedToken(use: string, { id, seenAt }: Token, key: string): string {
  const said = `${use}.${id}.${Math.trunc(seenAt).toString(36)}`;
  return `${said}.${seal(said, key)}`;
}

/** The token that a text stands for; null when it is not one of ours, of this use and key. */
export function readToken(use: string, text: string | undefined, key: string): Token | null {
  const match = text === undefined ? null : form.exec(text);
  if (!match) return null;
  const [, usedFor, id = '', seen = '', given = ''] = match;
  const right = Buffer.from(seal(`${usedFor}.${id}.${seen}`, key));
  const told = Buffer.from(given);
  if (right.length !== told.length || !timingSafeEqual(right, told) || usedFor !== use) return null;
  return { id, seenAt: Number.parseInt(seen, 36) };
}

const seal = (said: string, key: string): string =>
  createHmac('sha256', Buffer.from(key, 'base64')).update(said).digest('base64url');
