import type { IConnectPacket } from 'mqtt-packet';

/** How many messages the broker may have under way to us at once. */
const receiveMaximum = 1000;
/** The session never expires. **Source:** MQTT 5.0 (2019), section 3.1.2.11.2. */
const forEver = 0xffff_ffff;
export const keepAliveSeconds = 30;

export interface SessionParts {
  version: 4 | 5;
  clientId: string;
  /** As in an address: percent-encoded, empty for none. */
  username: string;
  /** As in an address: percent-encoded, empty for none. */
  password: string;
  /** Where the broker says that we are gone, when we are. */
  statusTopic: string;
}

/** The packet that takes up a lasting session at another broker, with our will. */
export function sessionConnect(parts: SessionParts): IConnectPacket {
  const { version, clientId, username, password, statusTopic } = parts;
  return {
    cmd: 'connect',
    protocolId: 'MQTT',
    protocolVersion: version,
    clientId,
    clean: false,
    keepalive: keepAliveSeconds,
    ...(username ? { username: decodeURIComponent(username) } : {}),
    ...(password ? { password: Buffer.from(decodeURIComponent(password)) } : {}),
    will: {
      topic: statusTopic,
      payload: Buffer.from(JSON.stringify({ schema: 1, status: 'offline' })),
      qos: 1,
      retain: true,
    },
    ...(version === 5 ? { properties: { sessionExpiryInterval: forEver, receiveMaximum } } : {}),
  };
}
