import {
  delayOfStrangersMs,
  forgottenAfterMs,
  noTries,
  type Tries,
  waitMs,
  wrongAgain,
  wrongOfAll,
} from '../rules/try-limit.ts';

/** Sources that are remembered; an attacker with more has to begin with the oldest again. */
const mostSources = 10_000;

export interface TryCounterParts {
  /** Milliseconds that only run forward. */
  upMs(): number;
  pause(ms: number): Promise<unknown>;
}

/** Who tries: a device that was logged in here before is counted for itself, whoever else hammers. */
export interface Trier {
  readonly source: string;
  readonly isStranger: boolean;
}

export type Tried = { kind: 'done'; right: boolean } | { kind: 'wait'; seconds: number };

/** Counts wrong PINs and codes, and holds back who tries too often. */
export function tryCounter({ upMs, pause }: TryCounterParts) {
  const sources = new Map<string, Tries>();
  const trying = new Set<string>();
  let ofStrangers: Tries = noTries;

  function remember(source: string, tries: Tries): void {
    sources.delete(source);
    sources.set(source, tries);
    if (sources.size <= mostSources) return;
    for (const [old, { lastAt }] of sources) {
      if (sources.size <= mostSources && upMs() - lastAt < forgottenAfterMs) break;
      sources.delete(old);
    }
  }

  return {
    /** Lets one try through, one at a time of each source. */
    async attempt({ source, isStranger }: Trier, isRight: () => Promise<boolean>): Promise<Tried> {
      const wait = waitMs(sources.get(source) ?? noTries, upMs());
      if (wait > 0) return { kind: 'wait', seconds: Math.ceil(wait / 1000) };
      if (trying.has(source)) return { kind: 'wait', seconds: 1 };
      trying.add(source);
      try {
        if (isStranger) {
          const delay = delayOfStrangersMs(ofStrangers, upMs());
          if (delay > 0) await pause(delay);
        }
        const right = await isRight();
        if (right) sources.delete(source);
        else {
          remember(source, wrongAgain(sources.get(source) ?? noTries, upMs()));
          if (isStranger) ofStrangers = wrongOfAll(ofStrangers, upMs());
        }
        return { kind: 'done', right };
      } finally {
        trying.delete(source);
      }
    },
  };
}
export type TryCounter = ReturnType<typeof tryCounter>;
