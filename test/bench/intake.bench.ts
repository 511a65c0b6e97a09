import { connectAsync, type MqttClient } from 'mqtt';
import { afterAll, bench, describe } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import type { TakeMessage } from '../../daemon/ingest/message-port.ts';
import { openSite } from '../monitor/site.ts';

const log = { info: () => {}, warn: () => {} };
const closers: (() => Promise<unknown> | unknown)[] = [];
afterAll(async () => {
  for (const close of closers) await close();
});

let at = Date.UTC(2026, 3, 1);

/** A broker that answers at once, or one that commits first; both in this process. */
async function brokerWith(take: TakeMessage) {
  const port = await startBroker({ host: '127.0.0.1', port: 0, take, log });
  const clients: MqttClient[] = [];
  for (let i = 0; i < 20; i++) clients.push(await connectAsync(`mqtt://127.0.0.1:${port.port}`));
  closers.push(async () => {
    for (const client of clients) await client.endAsync(true);
    await port.close();
  });
  return (connections: number, inFlight: number) =>
    Promise.all(
      clients.slice(0, connections).flatMap((client, c) =>
        Array.from({ length: inFlight }, () => {
          at += 1000;
          return client.publishAsync(
            `boardcure/shed/sensor/node-${c}/air-temperature`,
            JSON.stringify({ value: 18.4, time: at }),
            { qos: 1 },
          );
        }),
      ),
    );
}

const site = openSite();
closers.push(() => site.close());
const queue = groupCommit({
  commit: async (group) => site.writer.commitReadings(group),
  committed: (result) => site.monitor.committed(result),
  failed: (cause) => {
    throw cause;
  },
  now: () => at,
  spacingMs: 0,
  groupSize: 400,
});
const intake = createIntake({
  site: 'shed',
  maxPayloadBytes: 65_536,
  now: () => at,
  clockTrusted: () => true,
  queue,
});
const bare = await brokerWith((_message, done) => done(null));
const committing = await brokerWith(intake.take);

for (const [connections, inFlight] of [
  [1, 1],
  [1, 50],
  [20, 20],
] as const) {
  describe(`acknowledged readings, ${connections} connections × ${inFlight} under way`, () => {
    bench('the broker with nothing stored', async () => {
      await bare(connections, inFlight);
    });
    bench('committed, then acknowledged', async () => {
      await committing(connections, inFlight);
    });
  });
}
