import { describe, expect, it, onTestFinished } from 'vitest';
import { openSite } from './site.ts';

const hourMs = 3_600_000;
const evening = Date.UTC(2026, 8, 4, 18);

/** A wall open to the sky with a coat of the evening, and twelve hours of air. */
function wallByNight(rhPercent: number) {
  const site = openSite();
  onTestFinished(() => site.close());
  const outdoors = site.place('Outdoors', 'outdoors');
  const at = Array.from({ length: 25 }, (_, half) => evening + (half * hourMs) / 2);
  site.send(at.map((one) => ({ sensor: 'o1', at: one, value: 10 })));
  const quantity = 'relative-humidity' as const;
  site.send(at.map((one) => ({ sensor: 'o1', at: one, value: rhPercent, quantity })));
  site.put('o1', outdoors);
  const batchId = site.batch(outdoors);
  site.coat(batchId, 0, evening);
  return { site, batchId };
}

describe('a night on wet film', () => {
  // At 10 °C and 95 % the dew point is 9.2 °C; boards under the sky are taken 2 K colder than the air.
  it('of dew is marked once, by the house', () => {
    const { site, batchId } = wallByNight(95);
    const morning = evening + 12 * hourMs;
    const found = site.monitor.dewNights(morning);
    expect(found).toMatchObject([{ batchId, kind: 'dew-night', automatic: true }]);
    for (const remark of found) site.writer.createRemark(remark, morning);
    site.monitor.factsChanged();
    expect(site.monitor.dewNights(morning)).toEqual([]);
    expect(site.monitor.dewNights(morning + hourMs)).toEqual([]);
  });

  it('that stayed dry is none', () => {
    expect(wallByNight(70).site.monitor.dewNights(evening + 12 * hourMs)).toEqual([]);
  });
});
