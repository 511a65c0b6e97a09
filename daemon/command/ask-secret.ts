import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

/** Who sits at the other end, or what was piped in. */
export interface Typist {
  askSecret(question: string): Promise<string | null>;
  /** Whether a person types, who may mistype. */
  isTerminal: boolean;
}

/** Whoever started this process. */
export const typist = (): Typist => ({ askSecret, isTerminal: process.stdin.isTTY === true });

/**
 * Asks for something that nobody should read over a shoulder: what is typed is not shown. Where no
 * person sits at the other end, the next line of the standard input is taken.
 *
 * @returns the line; null at the end of the input
 */
function askSecret(question: string): Promise<string | null> {
  const { stdin, stderr } = process;
  const silent = new Writable({ write: (_chunk, _encoding, done) => done() });
  lines ??= createInterface({
    input: stdin,
    output: silent,
    terminal: stdin.isTTY === true,
  })[Symbol.asyncIterator]();
  if (stdin.isTTY) stderr.write(question);
  return lines.next().then(({ value, done }) => {
    if (stdin.isTTY) stderr.write('\n');
    return done ? null : value;
  });
}

/** One reader for all questions: each would swallow the lines of the next. */
let lines: AsyncIterator<string> | undefined;
