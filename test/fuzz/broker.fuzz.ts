import { describe, it } from 'vitest';
import { sendAnyBytes, takeAnything } from './broker-messages.ts';

const runs = Number(process.env.FUZZ_RUNS ?? 100_000);

describe('whatever is sent to the broker', () => {
  it(`${runs} messages are answered once each, and good readings flow on`, () =>
    takeAnything(runs));
  it('bytes that are no MQTT, or nearly, trouble nobody else', () =>
    sendAnyBytes(Math.ceil(runs / 50)));
});
