import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { programPath } from '../house/needs.ts';

/** A mosquitto of our own, as Debian has it, on a port of this computer only. */
export interface Mosquitto {
  readonly port: number;
  /** Ends it in order: it writes its state to disk. */
  stop(): Promise<void>;
  start(): Promise<void>;
  /** Ends it and removes all it wrote. */
  remove(): Promise<void>;
}

export interface MosquittoOptions {
  /** What it knows after a restart; default true. */
  persistence?: boolean;
  /** Only this user may connect. */
  user?: { name: string; password: string };
  /** Its configuration, in place of all the above. */
  config?: (port: number, folder: string) => string;
}

/** A port that nobody listens on just now. */
export async function freePort(): Promise<number> {
  const server = createServer();
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  server.close();
  await once(server, 'close');
  return port;
}

/** Starts mosquitto with a configuration of its own in a folder of its own. */
export async function startMosquitto(options: MosquittoOptions = {}): Promise<Mosquitto> {
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-mosquitto-'));
  const port = await freePort();
  const config = [
    `listener ${port} 127.0.0.1`,
    // Started by root it would become another user, who may not write here.
    'user root',
    `persistence ${options.persistence ?? true}`,
    `persistence_location ${folder}/`,
    // Its defaults are 20 under way and 1,000 waiting; beyond that it throws messages away.
    'max_inflight_messages 1000',
    'max_queued_messages 0',
    'log_dest file /dev/null',
  ];
  if (options.user) {
    const file = join(folder, 'passwords');
    const { name, password } = options.user;
    execFileSync(programPath('mosquitto_passwd') ?? '', ['-b', '-c', file, name, password]);
    config.push('allow_anonymous false', `password_file ${file}`);
  } else {
    config.push('allow_anonymous true');
  }
  const configFile = join(folder, 'mosquitto.conf');
  writeFileSync(configFile, options.config?.(port, folder) ?? `${config.join('\n')}\n`);
  let child: ChildProcess | null = null;

  async function start(): Promise<void> {
    child = spawn(programPath('mosquitto') ?? 'mosquitto', ['-c', configFile], {
      stdio: 'ignore',
    });
    for (let attempt = 0; attempt < 100; attempt++) {
      if (child.exitCode !== null) throw new Error(`mosquitto ended with ${child.exitCode}`);
      if (await answers(port)) return;
      await pause(50);
    }
    throw new Error(`mosquitto does not answer on port ${port}`);
  }
  async function stop(): Promise<void> {
    const own = child;
    child = null;
    if (!own || own.exitCode !== null) return;
    const ended = once(own, 'exit');
    own.kill('SIGTERM');
    await ended;
  }
  await start();
  return {
    port,
    start,
    stop,
    async remove() {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function answers(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    socket.once('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', () => resolve(false));
  });
}
