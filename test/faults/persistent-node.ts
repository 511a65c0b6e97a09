import { connect, type MqttClient } from 'mqtt';

/** A reading as a node sent it. */
export interface SentReading {
  /** UTC epoch ms */
  at: number;
  /** °C */
  value: number;
}

/**
 * A radio node that sends readings with their own times at QoS 1 as fast as they are acknowledged,
 * and sends again what was not, for as long as it takes.
 *
 * @param port - of the broker
 * @param sensor - its id
 * @param next - what to send next
 * @param window - readings under way at most
 */
export function persistentNode(
  port: number,
  sensor: string,
  next: () => SentReading,
  window: number,
) {
  const topic = `boardcure/shed/sensor/${sensor}/air-temperature`;
  const client: MqttClient = connect(`mqtt://127.0.0.1:${port}`, {
    clientId: `node-${sensor}`,
    reconnectPeriod: 50,
    connectTimeout: 2000,
    clean: true,
  });
  client.on('error', () => {});
  const acknowledged = new Map<number, number>();
  let underWay = 0;
  let sending = true;
  let live = false;
  let interrupted = 0;
  let drained: (() => void) | null = null;
  client.on('close', () => {
    if (live) interrupted += underWay;
    live = false;
  });

  function fill(): void {
    while (sending && client.connected && underWay < window) {
      const reading = next();
      underWay++;
      const payload = JSON.stringify({ value: reading.value, time: reading.at });
      client.publish(topic, payload, { qos: 1 }, (error) => {
        underWay--;
        if (!error) acknowledged.set(reading.at, reading.value);
        fill();
        if (!sending && underWay === 0) drained?.();
      });
    }
  }
  client.on('connect', () => {
    live = true;
    fill();
  });

  return {
    sensor,
    acknowledged,
    /** Readings that were under way when a connection was lost. */
    interrupted: () => interrupted,
    /** Sends nothing new; settles when all that was sent is acknowledged. */
    async finish(): Promise<void> {
      sending = false;
      if (underWay > 0) {
        await new Promise<void>((resolve) => {
          drained = resolve;
        });
      }
      await client.endAsync(true);
    },
  };
}
