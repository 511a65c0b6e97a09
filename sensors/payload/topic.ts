import { type Quantity, quantities } from '../../daemon/contract/quantity.ts';
import { type Refused, refuse, shown } from './refusal.ts';
import { allowedSensorId } from './sensor-template.ts';

/** Where a message is addressed: the sensor, and the quantity if the topic names one. */
export type Address = { readonly sensor: string; readonly quantity: Quantity | null };

export type ReadTopic =
  | { readonly kind: 'not-ours' }
  | { readonly kind: 'address'; readonly address: Address }
  | Refused;

/**
 * Tells whether a word is one of the quantities, exactly as written.
 * @param word any text
 */
export function isQuantity(word: string): word is Quantity {
  return (quantities as readonly string[]).includes(word);
}

/**
 * Reads `boardcure/<site>/sensor/<sensor>` with or without `/<quantity>`.
 * @param topic an MQTT topic name, any text
 * @param site the site this daemon answers for; other sites are not ours
 */
export function readTopic(topic: string, site: string): ReadTopic {
  const levels = topic.split('/', 6);
  if (levels[0] !== 'boardcure' || levels[1] !== site || levels[2] !== 'sensor') {
    return { kind: 'not-ours' };
  }
  const [, , , sensor, quantity] = levels;
  if (sensor === undefined || levels.length > 5 || quantity === '') {
    return refuse({
      code: 'topic-not-understood',
      detail: `The topic ${shown(topic)} has the wrong number of parts; publish to boardcure/${site}/sensor/<sensor> or boardcure/${site}/sensor/<sensor>/<quantity>.`,
    });
  }
  if (!allowedSensorId.test(sensor)) {
    return refuse({
      code: 'sensor-id-not-allowed',
      detail: `The sensor id ${shown(sensor)} in the topic is not allowed; use 1 to 64 of the characters A–Z a–z 0–9 . _ -`,
    });
  }
  if (quantity === undefined) return { kind: 'address', address: { sensor, quantity: null } };
  if (!isQuantity(quantity)) {
    return refuse({
      code: 'quantity-unknown',
      detail: `The topic ends in ${shown(quantity)}, which is no quantity known here; end it in one of ${quantities.join(', ')}.`,
      sensor,
    });
  }
  return { kind: 'address', address: { sensor, quantity } };
}
