import type { Batch } from '../../daemon/contract/batch.ts';
import type { Place } from '../../daemon/contract/place.ts';
import type { RunningDaemon } from './running-daemon.ts';

export const HOUR_MS = 3_600_000;
const STEP_MS = 10 * 60_000;

/** Warmest in the afternoon, and a little colder from day to day. */
const swing = (at: number, mean: number, by: number) =>
  mean -
  by * Math.cos((2 * Math.PI * (at - 3 * HOUR_MS)) / (24 * HOUR_MS)) +
  0.6 * Math.sin(at / 9e6);

/**
 * A rack in a room beside outdoors, with days of swinging air, a silence of some hours, pins in the
 * boards, and a batch that was coated, felt, measured by hand and written about.
 */
export async function curvingShed(
  daemon: RunningDaemon,
  days: number,
): Promise<{ room: Place; rack: Place; batch: Batch; now: number }> {
  const now = Math.floor(Date.now() / STEP_MS) * STEP_MS;
  const ago = (hours: number) => new Date(now - hours * HOUR_MS).toISOString();
  const room = await daemon.call<Place>('POST', 'places', {
    ...{ name: 'Paint shed', kind: 'room', volumeM3: 80 },
  });
  const rack = await daemon.call<Place>('POST', 'places', {
    ...{ name: 'North rack', kind: 'rack', within: room.id },
  });
  const yard = await daemon.call<Place>('POST', 'places', { name: 'Yard', kind: 'outdoors' });
  const count = (days * 24 * HOUR_MS) / STEP_MS;
  const moments = Array.from({ length: count + 1 }, (_, i) => now - (count - i) * STEP_MS);
  // Nobody heard the rack for six hours, two days ago.
  const isSilent = (at: number) => at > now - 54 * HOUR_MS && at < now - 48 * HOUR_MS;
  const send = (sensor: string, quantity: string, value: (at: number) => number) =>
    daemon.publish(
      sensor,
      quantity,
      moments
        .filter((at) => sensor !== 'rack-1' || !isSilent(at))
        .map((at) => ({ at, value: Math.round(value(at) * 100) / 100 })),
    );
  await send('rack-1', 'air-temperature', (at) => swing(at, 15.5, 3.2));
  await send('rack-1', 'relative-humidity', (at) => 66 - 4 * (swing(at, 15.5, 3.2) - 15.5));
  await send('shed-1', 'air-temperature', (at) => swing(at, 16.5, 3.6));
  await send('shed-1', 'relative-humidity', (at) => 62 - 3.5 * (swing(at, 16.5, 3.6) - 16.5));
  await send('shed-1', 'carbon-dioxide', (at) => 560 + 140 * Math.sin(at / 2.1e7));
  await send('yard-1', 'air-temperature', (at) => swing(at, 10, 6));
  await send('yard-1', 'relative-humidity', (at) => 78 - 2.5 * (swing(at, 10, 6) - 10));
  await send('pins-1', 'wood-moisture', (at) => 17 - (at - now + days * 24 * HOUR_MS) / 1.4e8);
  for (const [sensor, placeId] of [
    ['rack-1', rack.id],
    ['pins-1', rack.id],
    ['shed-1', room.id],
    ['yard-1', yard.id],
  ]) {
    await daemon.call('PATCH', `sensors/${sensor}`, { placeId });
  }
  const batch = await daemon.call<Batch>('POST', 'batches', {
    ...{ name: 'South gable', placeId: rack.id, species: 'norway-spruce', surface: 'sawn' },
    boards: { count: 24, lengthMm: 4200, widthMm: 145, thicknessMm: 22 },
  });
  const path = `batches/${batch.id}`;
  await daemon.call('POST', `${path}/coats`, { coat: 0, finishedAt: ago(Math.min(60, days * 16)) });
  await daemon.call('POST', `${path}/tests`, { at: ago(30), gate: 'turn', passed: false });
  await daemon.call('POST', `${path}/tests`, { at: ago(12), gate: 'turn', passed: true });
  await daemon.call('POST', `${path}/remarks`, { at: ago(20), kind: 'runs', text: '=1+1 on two' });
  const measured = { batchId: batch.id, quantity: 'wood-moisture', at: ago(24) };
  await daemon.call('POST', 'readings', { ...measured, values: [14.2, 13.1, 15.4] });
  return { room, rack, batch, now };
}
