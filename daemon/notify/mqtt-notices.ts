import { type Channel, entryOut } from './channel.ts';

export interface MqttNoticeParts {
  site: string;
  /** Settles once the broker has the message. */
  deliver(topic: string, payload: string): Promise<void>;
}

/** Publishes each notice as `boardcure/<site>/notice` and the digest as `…/digest`, not retained. */
export function mqttChannel({ site, deliver }: MqttNoticeParts): Channel {
  return {
    name: 'mqtt',
    async send({ message, title, text, voice }) {
      const { body, id } = message;
      if (body.kind === 'digest') {
        const digest = { schema: 1, id, title, text };
        await deliver(`boardcure/${site}/digest`, JSON.stringify(digest));
        return;
      }
      for (const entry of body.entries) {
        await deliver(
          `boardcure/${site}/notice`,
          JSON.stringify({ schema: 1, id, ...entryOut(entry, voice) }),
        );
      }
    },
  };
}
