import { code, generated, table } from './markdown.mjs';
import { fieldsOf, schemaWords } from './schema-words.mjs';

/**
 * @typedef {{ topic: string, direction: 'in' | 'out', retained: boolean, summary: string,
 *   payload: any }} MqttTopic the payload as JSON Schema
 * @typedef {Record<string, { words: string, unit: string, senmlUnits: readonly string[],
 *   low: number, high: number }>} Quantities
 */

/**
 * The page of all topics.
 *
 * @param {MqttTopic[]} topics
 * @param {Quantities} quantities
 */
export function mqttPage(topics, quantities) {
  const list = topics.map(({ topic, direction, retained, summary }) => [
    code(topic.replaceAll('{', '<').replaceAll('}', '>')),
    direction === 'in' ? 'to the daemon' : 'from the daemon',
    retained ? 'yes' : '',
    summary,
  ]);
  const units = Object.entries(quantities).map(([name, { words, unit, senmlUnits, low, high }]) => [
    code(name),
    words,
    unit,
    senmlUnits.map(code).join(', '),
    `${low} to ${high}`,
  ]);
  const payloads = topics.map(({ topic, payload }) => {
    const title = `### ${topic.replaceAll('{', '<').replaceAll('}', '>')}`;
    return [title, ...payloadWords(payload)].join('\n\n');
  });
  return `${generated}

# MQTT

Version 3.1.1 (a broker of your own may speak 5 with others). \`<site>\` is the name in the settings, \`shed\`
unless set. The same is described for programs in [asyncapi.json](asyncapi.json) (AsyncAPI 3.0). How to make a
sensor that publishes here is told in [own-sensor-node.md](own-sensor-node.md); a device with topics of its own
is read by a rule, which the page _Topics_ helps to write.

## Topics

${table(['topic', 'way', 'retained', 'what'], list)}

- A sensor’s name is up to 64 letters, digits, \`.\`, \`_\` and \`-\`. It exists from its first reading on.
- Publish at QoS 1. The acknowledgement comes once the reading is on disk, at the latest some seconds later.
- A time of its own makes a reading idempotent: sent twice, it counts once. It is believed between 2000 and five
  minutes ahead. Without one the arrival counts, and a message that the broker had retained is then not now.
- What cannot be taken is acknowledged, counted and kept for a look (\`GET /api/v1/refused\`).

## Quantities

${table(['quantity', 'what', 'unit', 'SenML units', 'taken'], units)}

## Payloads

${payloads.join('\n\n')}
`;
}

/** @param {any} payload */
function payloadWords(payload) {
  const choices = payload.anyOf ?? [payload];
  return choices.flatMap((/** @type {any} */ one) => {
    const item = one.type === 'array' ? one.items : one;
    const rows = fieldsOf(item).map(({ name, words, says, isNeeded }) => [
      code(name),
      words,
      isNeeded ? '' : 'may be left out',
      says,
    ]);
    const says = one.description ? `: ${one.description}` : '';
    if (rows.length === 0) return [`A ${schemaWords(one)}${says}.`];
    const first = one.type === 'array' ? 'A JSON array; each entry:' : 'A JSON object:';
    return [first, table(['field', 'is', '', 'what'], rows)];
  });
}
