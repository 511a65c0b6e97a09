import { say } from './say.mjs';

/** What kept a script from its work: what was wrong, where, and what to do about it. */
export class SetupFault extends Error {
  /**
   * @param {string} what what was wrong
   * @param {{ where: string, doThis: string, cause?: unknown }} facts
   */
  constructor(what, { where, doThis, cause }) {
    super(what, { cause });
    this.name = 'SetupFault';
    this.where = where;
    this.doThis = doThis;
  }
}

/**
 * Prints a fault and makes the process end with 1.
 *
 * @param {unknown} error
 */
export function endWithFault(error) {
  if (error instanceof SetupFault) {
    say(error.message);
    process.stderr.write(`  where: ${error.where}\n  what to do: ${error.doThis}\n`);
  } else {
    process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
  }
  process.exitCode = 1;
}
