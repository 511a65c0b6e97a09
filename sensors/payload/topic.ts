import { type Quantity, quantities } from '../../daemon/contract/quantity.ts';
import { because, type Refused, refuse, shown } from './refusal.ts';
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
      ...because('topic-levels', { topic: shown(topic), site }),
    });
  }
  if (!allowedSensorId.test(sensor)) {
    return refuse({
      code: 'sensor-id-not-allowed',
      ...because('topic-sensor', { word: shown(sensor) }),
    });
  }
  if (quantity === undefined) return { kind: 'address', address: { sensor, quantity: null } };
  if (!isQuantity(quantity)) {
    return refuse({
      code: 'quantity-unknown',
      ...because('topic-quantity', { word: shown(quantity), options: [...quantities] }),
      sensor,
    });
  }
  return { kind: 'address', address: { sensor, quantity } };
}
