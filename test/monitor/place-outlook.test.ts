import { afterEach, describe, expect, it } from 'vitest';
import { openSite, type TestSite } from './site.ts';

const hour = 3_600_000;
const start = Date.UTC(2026, 3, 1);
let site: TestSite | null = null;
afterEach(() => {
  site?.close();
  site = null;
});

/** Five days of a wall outdoors that follows the yard; a coat went on at the end. */
function wallAfterFiveDays() {
  const one = openSite();
  site = one;
  const yard = one.place('Yard', 'outdoors');
  const wall = one.place('South wall', 'wall', yard);
  const days = 5 * 24;
  one.send(
    Array.from({ length: days + 1 }, (_, i) => ({
      sensor: 'yard',
      at: start + i * hour,
      value: 14 + 4 * Math.sin(((i % 24) * Math.PI) / 12),
    })),
  );
  one.put('yard', yard);
  const batch = one.batch(wall);
  const end = start + days * hour;
  one.coat(batch, 0, end);
  const likely = () => Date.parse(one.coatsAt(batch, end)[0]?.gates.recoat.likely ?? '');
  const send = (tempC: number) => {
    const points = Array.from({ length: 240 }, (_, i) => ({ at: end + i * hour, tempC }));
    one.writer.keepForecast(tempC === 99 ? [] : points);
    one.monitor.forecastChanged();
  };
  return { likely, send, end };
}

describe('what lies ahead of a coat', () => {
  it('is read from the recorded days: at a mean of 14 °C over 5 °C, 882 °C·h take about 98 h', () => {
    const { likely, end } = wallAfterFiveDays();
    const hours = (likely() - end) / hour;
    expect(hours).toBeGreaterThan(88);
    expect(hours).toBeLessThan(108);
  });

  it('follows a weather forecast where one was sent, and forgets it when it is taken back', () => {
    const { likely, send } = wallAfterFiveDays();
    const without = likely();
    send(24);
    expect(likely()).toBeLessThan(without - 12 * hour);
    send(8);
    expect(likely()).toBeGreaterThan(without + 24 * hour);
    send(99);
    expect(likely()).toBe(without);
  });
});
