import { setTimeout as pause } from 'node:timers/promises';
import { wireClient } from '../ingest/wire-client.ts';

/** Each reading is sent so long after the one before was acknowledged. */
const everyMs = 20;

/**
 * A sensor that goes on with its work while others misbehave: one reading after the other, each
 * when the one before is acknowledged.
 *
 * @param port - of the broker
 * @param sensor - its id
 */
export async function bystander(port: number, sensor = 'bystander') {
  const wire = await wireClient(port, { keepalive: 0 });
  const waits: number[] = [];
  let going = true;
  const ended = work();

  async function work(): Promise<void> {
    for (let id = 1; going; id = (id % 60_000) + 1) {
      const sentAt = performance.now();
      wire.send({
        ...{ cmd: 'publish', topic: `boardcure/shed/sensor/${sensor}/air-temperature` },
        ...{ payload: '18.5', qos: 1, messageId: id, retain: false, dup: false },
      });
      await wire.hear('puback', (packet) => packet.messageId === id);
      waits.push(performance.now() - sentAt);
      await pause(everyMs);
    }
  }

  return {
    /** How often it was answered so far. */
    answered: () => waits.length,
    /** Lets it finish; how long its readings waited to be acknowledged, ms, ascending. */
    async finish(): Promise<number[]> {
      going = false;
      await ended;
      wire.close();
      return waits.sort((a, b) => a - b);
    },
  };
}
