import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { connectAsync, type MqttClient } from 'mqtt';
import { startDaemon } from '../journey/running-daemon.ts';
import { lastingFolder } from './store-on-disk.ts';

export interface LiveWritten {
  megabytesADay: number;
  readings: number;
  /** From publish to acknowledgement, ms. */
  medianMs: number;
  longestMs: number;
}

const writtenBy = (pid: number | undefined): number => {
  const counters = readFileSync(`/proc/${pid}/io`, 'utf8');
  return Number(/^write_bytes: (\d+)$/m.exec(counters)?.[1] ?? Number.NaN);
};

/**
 * Sends readings to a whole daemon with its settings as they are by default, evenly over so many
 * nodes that each speaks once a second, and counts what the kernel wrote for its process.
 *
 * @param perSecond - readings a second, and nodes
 * @param seconds - how long it is counted; a quarter of that goes before
 */
export async function liveFlow(perSecond: number, seconds: number): Promise<LiveWritten> {
  const { folder, remove } = lastingFolder();
  const daemon = await startDaemon(folder);
  const nodes: MqttClient[] = await Promise.all(
    Array.from({ length: perSecond }, (_, i) =>
      connectAsync(`mqtt://127.0.0.1:${daemon.mqtt}`, { clientId: `node-${i}` }),
    ),
  );
  let readings = 0;
  let waits: number[] = [];
  const send = async (node: MqttClient, i: number) => {
    const sentAt = performance.now();
    const value = (18 + Math.sin(sentAt / 60_000) + i / 100).toFixed(2);
    await node.publishAsync(`boardcure/shed/sensor/n${i}/air-temperature`, value, { qos: 1 });
    readings++;
    waits.push(performance.now() - sentAt);
  };
  const timers: NodeJS.Timeout[] = [];
  for (const [i, node] of nodes.entries()) {
    await pause(1000 / perSecond);
    timers.push(setInterval(() => void send(node, i), 1000));
  }
  await pause((seconds / 4) * 1000);
  const [before, began] = [writtenBy(daemon.process.pid), performance.now()];
  readings = 0;
  waits = [];
  await pause(seconds * 1000);
  const bytes = writtenBy(daemon.process.pid) - before;
  const days = (performance.now() - began) / 86_400_000;
  for (const timer of timers) clearInterval(timer);
  for (const node of nodes) await node.endAsync(true);
  await daemon.stop();
  remove();
  waits.sort((a, b) => a - b);
  return {
    megabytesADay: bytes / 1e6 / days,
    readings,
    medianMs: waits[waits.length >> 1] ?? Number.NaN,
    longestMs: waits.at(-1) ?? Number.NaN,
  };
}
