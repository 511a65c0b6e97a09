/**
 * The topics as an AsyncAPI document. **Source:** AsyncAPI 3.0.0.
 *
 * @param {Record<string, import('./mqtt-page.mjs').MqttTopic>} topics by name
 * @param {string} version of the program
 */
export function asyncApi(topics, version) {
  const entries = Object.entries(topics);
  return {
    asyncapi: '3.0.0',
    info: {
      title: 'Boardcure over MQTT',
      version,
      description: 'Readings in, states and notices out. Said from the side of the daemon.',
      license: { name: 'MIT' },
    },
    defaultContentType: 'application/json',
    channels: Object.fromEntries(
      entries.map(([name, { topic, summary }]) => [
        name,
        {
          address: topic,
          summary,
          parameters: Object.fromEntries(
            [...topic.matchAll(/\{(\w+)\}/g)].map(([, parameter]) => [
              parameter,
              { description: PARAMETERS[parameter ?? ''] ?? '' },
            ]),
          ),
          messages: { [name]: { $ref: `#/components/messages/${name}` } },
        },
      ]),
    ),
    operations: Object.fromEntries(
      entries.map(([name, { direction, retained, summary }]) => [
        direction === 'in' ? `take-${name}` : `tell-${name}`,
        {
          action: direction === 'in' ? 'receive' : 'send',
          channel: { $ref: `#/channels/${name}` },
          summary,
          bindings: { mqtt: { qos: 1, retain: retained, bindingVersion: '0.2.0' } },
          messages: [{ $ref: `#/channels/${name}/messages/${name}` }],
        },
      ]),
    ),
    components: {
      messages: Object.fromEntries(
        entries.map(([name, { summary, payload }]) => {
          const { $schema: _, ...schema } = payload;
          return [name, { name, summary, payload: schema }];
        }),
      ),
    },
  };
}

/** @type {Record<string, string>} */
const PARAMETERS = {
  site: 'name of the site in the settings',
  sensor: 'name of the sensor: up to 64 letters, digits, ".", "_" and "-"',
  quantity: 'what is measured',
  id: 'UUID of the place or batch',
};
