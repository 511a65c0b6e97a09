import { describe, expect, it } from 'vitest';
import { resistanceFromMoisture } from '../../daemon/science/wood.ts';
import { build, hourMs, moment, startAt, withCoat } from './built-site.ts';

/** Pins in spruce boards at 10 °C, by their resistance. */
const ohms = (percent: number, woodTempC = 10) =>
  resistanceFromMoisture(percent, { species: 'norway-spruce', woodTempC });

async function withPins(percents: number[]) {
  const site = await build();
  const { room, batch } = await withCoat(site);
  for (const [i, percent] of percents.entries()) {
    const sensor = `pin-${i}`;
    await site.hear(sensor, 'wood-resistance', [
      [startAt - hourMs, ohms(percent)],
      [startAt, ohms(percent)],
    ]);
    await site.call('changeSensor', { id: sensor, body: { placeId: room.id } });
  }
  await site.hear('boards', 'surface-temperature', [[startAt - hourMs, 10]]);
  await site.call('changeSensor', { id: 'boards', body: { placeId: room.id } });
  const wood = async () => (await site.call('readBatch', { id: batch.id })).wood;
  return { site, room, batch, wood };
}

describe('pins in the boards of a batch', () => {
  it('are read by the batch’s timber and the temperature on the boards; the wettest speaks', async () => {
    const { wood } = await withPins([14, 17]);
    const told = await wood();
    expect(told).toMatchObject({ worst: 'pin-1', range: 'measured' });
    expect(told?.moisturePercent).toBeCloseTo(17, 6);
    expect(told?.spreadPercent).toBeCloseTo(3, 6);
    expect(told?.probes[0]).toMatchObject({
      ...{ curve: 'norway-spruce', curveAssumed: false, woodTempC: 10 },
      woodTempFrom: 'place-surface',
    });
  });

  it('tell no number above fibre saturation', async () => {
    const { wood } = await withPins([14, 36]);
    expect(await wood()).toMatchObject({
      ...{ worst: 'pin-1', range: 'wetter-than', moisturePercent: null, limitPercent: 28 },
      spreadPercent: null,
    });
  });

  it('go by their own timber where it is said', async () => {
    const { site, wood } = await withPins([16]);
    await site.call('changeSensor', { id: 'pin-0', body: { species: 'scots-pine' } });
    const told = await wood();
    expect(told?.probes[0]?.curve).toBe('scots-pine');
    // Pine conducts better than spruce at the same moisture: the same resistance is drier wood.
    expect(told?.moisturePercent ?? 0).toBeLessThan(15);
  });

  it('take the temperature of the air where no board tells it, and say so', async () => {
    const { site } = await withPins([16]);
    await site.call('changeSensor', { id: 'boards', body: { placeId: null } });
    const { wood } = await site.call('readSensor', { id: 'pin-0' });
    expect(wood).toMatchObject({ woodTempC: 20, woodTempFrom: 'air' });
  });

  it('are set right by a hand meter, also in their curve', async () => {
    const { site } = await withPins([16]);
    await site.call('createCalibration', {
      id: 'pin-0',
      body: {
        quantity: 'wood-moisture',
        how: { kind: 'hand-meter', actual: 15, measuredAt: moment(startAt) },
        from: null,
      },
    });
    expect((await site.call('readSensor', { id: 'pin-0' })).wood?.moisturePercent).toBeCloseTo(
      15,
      6,
    );
    const series = await site.call('series', {
      query: { sensor: 'pin-0', quantity: 'wood-moisture' },
    });
    expect(series.value.map((value) => Number(value?.toFixed(6)))).toEqual([15, 15]);
    expect(series.raw.map((value) => Number(value?.toFixed(6)))).toEqual([16, 16]);
  });
});
