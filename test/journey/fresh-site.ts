import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import { type RunningDaemon, startDaemon } from './running-daemon.ts';

/** A folder for each test of a file, and daemons with their data in it; all gone after the test. */
export function freshSite() {
  let folder = '';
  let closers: (() => Promise<unknown>)[] = [];
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'boardcure-journey-'));
    closers = [() => rm(folder, { recursive: true, force: true })];
  });
  afterEach(async () => {
    for (const close of closers.reverse()) await close();
  });
  const atEnd = (close: () => Promise<unknown>) => void closers.push(close);
  return {
    /** A path in the folder of this test. */
    path: (name: string) => join(folder, name),
    /** To be done after this test, the last one first. */
    atEnd,
    /** @param mqtt - another broker; the embedded one when left out */
    async daemon(mqtt?: string): Promise<RunningDaemon> {
      const daemon = await startDaemon(join(folder, 'data'), mqtt === undefined ? {} : { mqtt });
      atEnd(() => daemon.kill());
      return daemon;
    },
  };
}
