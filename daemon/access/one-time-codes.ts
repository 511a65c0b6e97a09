import { createHash, randomInt, timingSafeEqual } from 'node:crypto';
import { codeSigns, tidyCode } from '../rules/pin.ts';

/** Codes that wait at once. */
const mostCodes = 20;

/** A random code of signs that are told apart when read aloud. */
export function randomCode(length: number): string {
  return Array.from({ length }, () => codeSigns[randomInt(codeSigns.length)]).join('');
}

/**
 * Codes that are good once and for a while, each standing for something.
 *
 * @param upMs - milliseconds that only run forward
 */
export function oneTimeCodes<T>(length: number, lastsMs: number, upMs: () => number) {
  let codes: { digest: Buffer; endsAt: number; meaning: T }[] = [];
  const live = () => codes.filter(({ endsAt }) => endsAt > upMs());
  return {
    /** @returns the code as it is compared; nothing keeps it but whoever is told */
    issue(meaning: T): string {
      const code = randomCode(length);
      codes = [...live(), { digest: digestOf(code), endsAt: upMs() + lastsMs, meaning }].slice(
        -mostCodes,
      );
      return code;
    },
    /** What a code stands for; it is gone with that. Null when it is none of ours. */
    redeem(typed: string): { meaning: T } | null {
      const told = digestOf(tidyCode(typed));
      codes = live();
      const found = codes.find(({ digest }) => timingSafeEqual(digest, told));
      if (!found) return null;
      codes = codes.filter((one) => one !== found);
      return { meaning: found.meaning };
    },
    waiting: (): boolean => live().length > 0,
    forgetAll(): void {
      codes = [];
    },
  };
}

const digestOf = (code: string): Buffer => createHash('sha256').update(code).digest();
