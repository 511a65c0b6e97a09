import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { JudgedShed } from './judge-shed.ts';
import type { JudgeTask, SentShed } from './judge-worker.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The judge as one plain script: Node 20 runs no TypeScript by itself. */
async function bundled(): Promise<string> {
  await build({
    ...{ root, configFile: false, logLevel: 'warn' },
    build: { ssr: 'test/judge/judge-worker.ts', outDir: '.build/judge', emptyOutDir: true },
  });
  return `${root}.build/judge/judge-worker.js`;
}

/**
 * Judges many sheds, in as many processes as there are cores.
 *
 * @param tasks - one a shed
 * @param done - told after each
 */
export async function judgeMany(
  tasks: readonly JudgeTask[],
  done: (count: number) => void,
): Promise<JudgedShed[]> {
  const script = await bundled();
  const waiting = [...tasks];
  const sheds: JudgedShed[] = [];

  const worker = () =>
    new Promise<void>((resolve, reject) => {
      const child: ChildProcess = fork(script);
      const next = () => {
        const task = waiting.shift();
        if (task === undefined) child.disconnect();
        else child.send(task);
      };
      child.on('message', (shed: SentShed) => {
        sheds.push({ ...shed, air: new Map(shed.air) as JudgedShed['air'] });
        done(sheds.length);
        next();
      });
      child.once('error', reject);
      child.once('exit', (code) =>
        code === 0 ? resolve() : reject(new Error(`a judging process ended with ${code}`)),
      );
      next();
    });
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return sheds.sort((a, b) => a.seed - b.seed);
}
