import type { Said } from '../contract/sentence.ts';

/** An error whose reason is a sentence, to be told to somebody in his own language. */
export class SaidError extends Error {
  readonly said: Said;

  /** @param said - holds no secret and no address of a person */
  constructor(said: Said, options?: { cause: unknown }) {
    super(said.text, options);
    this.name = 'SaidError';
    this.said = said;
  }
}
