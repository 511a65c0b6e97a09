import { connectAsync } from 'mqtt';

/** How long to wait for a broker, ms. */
const patienceMs = 10_000;

/**
 * Publishes one message at QoS 1 and waits for its acknowledgement.
 *
 * @throws Error when no broker answers or it refuses
 */
export async function publishOnce(message: {
  url: string;
  topic: string;
  payload: string;
  retain: boolean;
}): Promise<void> {
  const client = await connectAsync(message.url, {
    connectTimeout: patienceMs,
    reconnectPeriod: 0,
  });
  try {
    await client.publishAsync(message.topic, message.payload, { qos: 1, retain: message.retain });
  } finally {
    await client.endAsync();
  }
}
