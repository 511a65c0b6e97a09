import { toMoment } from '../../daemon/contract/moment.ts';
import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';

/** The first moment SenML can name absolutely, epoch ms. **Source:** RFC 8428 section 4.5.3. */
const firstSenmlMoment = 2 ** 28 * 1000;

/**
 * The topic of a sensor in the default layout.
 * @param quantity absent for a SenML pack
 */
export function sensorTopic(site: string, sensor: string, quantity?: Quantity): string {
  const topic = `boardcure/${site}/sensor/${sensor}`;
  return quantity === undefined ? topic : `${topic}/${quantity}`;
}

/**
 * The payload of one value for a topic that names the quantity.
 * @param value in the unit of the quantity, finite
 * @param at epoch ms, the years 0 to 9999; absent for "now"
 */
export function valuePayload(value: number, at?: number): string {
  return at === undefined ? String(value) : JSON.stringify({ value, time: toMoment(at) });
}

/**
 * A SenML pack of one sensor's values, for its topic without a quantity.
 * @param readings `value` in the unit of the quantity, finite; `at` epoch ms, from mid-1978 on, null for "now"
 * @throws RangeError when a time lies before the first that SenML can name
 */
export function senmlPayload(
  sensor: string,
  readings: readonly { quantity: Quantity; value: number; at: number | null }[],
): string {
  const records = readings.map(({ quantity, value, at }, index) => {
    if (at !== null && !(at >= firstSenmlMoment)) {
      throw new RangeError(`at is ${at}; SenML names times from ${firstSenmlMoment} ms on`);
    }
    return {
      ...(index === 0 ? { bn: `sensor:${sensor}:` } : {}),
      n: quantity,
      u: quantityFacts[quantity].senmlUnits[0],
      v: value,
      ...(at === null ? {} : { t: at / 1000 }),
    };
  });
  return JSON.stringify(records);
}
