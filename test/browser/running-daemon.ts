import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { connectAsync } from 'mqtt';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A built daemon in a process of its own, with its own data folder and free ports. */
export interface RunningDaemon {
  /** Address of the page, without a slash at its end. */
  readonly page: string;
  /** Port of the embedded broker. */
  readonly mqttPort: number;
  /** Sends messages to the broker at QoS 1, on any topic; resolves once they are acknowledged. */
  send(topic: string, ...payloads: string[]): Promise<void>;
  /** Sends a reading to the broker at QoS 1; resolves once it is acknowledged. */
  publish(sensor: string, quantity: string, readings: readonly Reading[]): Promise<void>;
  /** Calls a route; throws when it is refused. */
  call<T>(method: string, path: string, body?: unknown): Promise<T>;
  /** Ends it at once, as a power cut does; its data stay. */
  kill(): Promise<void>;
  /** Starts it again on the same ports and data. */
  restart(): Promise<void>;
  /** Ends it and removes its data. */
  close(): Promise<void>;
}

interface Reading {
  readonly value: number;
  /** UTC epoch ms. */
  readonly at: number;
}

interface Ready {
  readonly http: number;
  readonly mqtt: number;
}

/** Starts the daemon as a person does, with `node deploy/start.mjs serve`. */
export async function runDaemon(): Promise<RunningDaemon> {
  const data = mkdtempSync(join(tmpdir(), 'boardcure-browser-'));
  let ports: Ready = { http: 0, mqtt: 0 };
  let daemon: ChildProcess | null = null;

  async function start(): Promise<void> {
    const started = spawn(
      process.execPath,
      [
        join(ROOT, 'deploy/start.mjs'),
        ...['serve', '--data', data],
        ...['--http', `127.0.0.1:${ports.http}`, '--mqtt', `127.0.0.1:${ports.mqtt}`],
      ],
      { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] },
    );
    daemon = started;
    ports = await readyLine(started);
  }

  async function end(signal: 'SIGKILL' | 'SIGTERM'): Promise<void> {
    if (daemon === null || daemon.exitCode !== null || daemon.signalCode !== null) return;
    const gone = once(daemon, 'exit');
    daemon.kill(signal);
    await gone;
  }

  await start();
  const page = `http://127.0.0.1:${ports.http}`;
  return {
    page,
    mqttPort: ports.mqtt,
    async send(topic, ...payloads) {
      const client = await connectAsync(`mqtt://127.0.0.1:${ports.mqtt}`);
      for (const payload of payloads) await client.publishAsync(topic, payload, { qos: 1 });
      await client.endAsync();
    },
    async publish(sensor, quantity, readings) {
      const client = await connectAsync(`mqtt://127.0.0.1:${ports.mqtt}`);
      const topic = `boardcure/shed/sensor/${sensor}/${quantity}`;
      const sent = readings.map(({ value, at }) =>
        client.publishAsync(topic, JSON.stringify({ value, time: new Date(at).toISOString() }), {
          qos: 1,
        }),
      );
      await Promise.all(sent);
      await client.endAsync();
    },
    async call<T>(method: string, path: string, body?: unknown): Promise<T> {
      const response = await fetch(`${page}/api/v1/${path}`, {
        method,
        ...(body === undefined
          ? {}
          : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
      });
      const reply = await response.json();
      if (!response.ok) throw new Error(`${method} ${path}: ${JSON.stringify(reply)}`);
      return reply as T;
    },
    kill: () => end('SIGKILL'),
    restart: start,
    async close() {
      await end('SIGTERM');
      rmSync(data, { recursive: true, force: true });
    },
  };
}

async function readyLine(daemon: ChildProcess): Promise<Ready> {
  if (daemon.stdout === null) throw new Error('the daemon has no standard output');
  for await (const line of createInterface({ input: daemon.stdout })) {
    const said = line.startsWith('{') ? (JSON.parse(line) as { event?: string } & Ready) : null;
    if (said?.event === 'ready') {
      daemon.stdout.resume();
      return said;
    }
  }
  throw new Error('the daemon ended before it was ready: its own words stand above');
}
