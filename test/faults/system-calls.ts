import { readFileSync } from 'node:fs';

/** One system call as strace saw it. Begin and end are places in the order of what it saw. */
export interface SystemCall {
  name: string;
  /** What its first descriptor stands for: a file’s path, or a socket with its two addresses. */
  target: string;
  begin: number;
  /** Infinity when it had not returned when the trace ended. */
  end: number;
  /** null when it did not return a number. */
  returned: number | null;
  /** The bytes it wrote or read, all buffers after one another, as many as it returned. */
  bytes: Buffer;
}

/** What strace is called with, before the program that it watches. */
export const straceWords = (file: string, calls: readonly string[]): string[] => [
  'strace',
  // The watched program is our child and gets our signals; all its threads are followed.
  ...['-D', '-f'],
  // Descriptors with path or addresses, bytes in full and as hexadecimal digits.
  ...['-yy', '-xx', '-s', '262144'],
  ...['-e', `trace=${calls.join(',')}`, '-e', 'signal=none'],
  ...['-o', file],
];

/**
 * Reads what `straceWords` had written.
 *
 * The order of the lines is the order in which the calls of all threads were stopped, at their
 * entry and at their exit: a thread goes on only after its line is written. So what one thread told
 * another after a call returned comes after that line. Times would say less: they are taken when
 * strace gets to a thread.
 */
export function systemCalls(file: string): SystemCall[] {
  const calls: SystemCall[] = [];
  const open = new Map<string, { call: SystemCall; text: string }>();
  for (const [index, line] of readFileSync(file, 'latin1').split('\n').entries()) {
    const [, thread = '', rest = ''] = /^(\d+)\s+(.*)$/.exec(line) ?? [];
    const resumed = /^<\.\.\. \w+ resumed>(.*)$/.exec(rest);
    if (resumed) {
      const begun = open.get(thread);
      open.delete(thread);
      if (begun) complete(begun.call, begun.text + (resumed[1] ?? ''), index);
      continue;
    }
    const name = /^(\w+)\(/.exec(rest)?.[1];
    if (name === undefined) continue;
    const call: SystemCall = {
      ...{ name, target: '', begin: index, end: Number.POSITIVE_INFINITY },
      ...{ returned: null, bytes: Buffer.alloc(0) },
    };
    calls.push(call);
    const unfinished = /^(.*)<unfinished \.\.\.>$/.exec(rest);
    // What it is called with is known at its entry, except what it reads.
    if (unfinished) {
      open.set(thread, { call, text: unfinished[1] ?? '' });
      fillIn(call, unfinished[1] ?? '');
    } else {
      complete(call, rest, index);
    }
  }
  return calls;
}

function complete(call: SystemCall, text: string, end: number): void {
  const returned = /\)\s+= (-?\d+)/.exec(text)?.[1];
  call.end = end;
  call.returned = returned === undefined ? null : Number(returned);
  fillIn(call, text);
  if (call.returned !== null && call.returned >= 0) {
    call.bytes = call.bytes.subarray(0, call.returned);
  }
}

function fillIn(call: SystemCall, text: string): void {
  const target = /^\w+\(\d+<((?:[^<>]|->)*)>/.exec(text)?.[1] ?? '';
  call.target = target.startsWith('\\x') ? fromHex(target).toString() : target;
  // The program is read in pieces of megabytes, which tell nothing.
  if (call.target.endsWith('.js')) return;
  const buffers = [...text.matchAll(/"((?:\\x[0-9a-f]{2})*)"(\.\.\.)?/g)];
  if (buffers.some(([, , cut]) => cut)) throw new Error('strace left out some of the bytes');
  call.bytes = Buffer.concat(buffers.map(([, hex = '']) => fromHex(hex)));
}

const fromHex = (text: string) => Buffer.from(text.replaceAll('\\x', ''), 'hex');
