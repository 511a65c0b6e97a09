import type { Batch } from '../../daemon/contract/batch.ts';
import type { Place } from '../../daemon/contract/place.ts';
import type { RunningDaemon } from './running-daemon.ts';

const HOUR_MS = 3_600_000;

/**
 * A rack with a batch whose first coat went on some hours ago, at a steady 20 °C ever since.
 *
 * @param hours - since the last board; the newest reading is of now
 */
export async function rackWithCoat(
  daemon: RunningDaemon,
  name: string,
  hours: number,
): Promise<{ place: Place; batch: Batch }> {
  const now = Date.now();
  const place = await daemon.call<Place>('POST', 'places', { name, kind: 'rack' });
  const batch = await daemon.call<Batch>('POST', 'batches', {
    name: `Boards of ${name}`,
    placeId: place.id,
    species: 'norway-spruce',
    surface: 'sawn',
    boards: { count: 24, lengthMm: 4200, widthMm: 145, thicknessMm: 22 },
  });
  const finishedAt = new Date(now - hours * HOUR_MS).toISOString();
  await daemon.call('POST', `batches/${batch.id}/coats`, { coat: 0, finishedAt });

  const sensor = name.toLowerCase().replaceAll(' ', '-');
  const at = Array.from({ length: hours * 2 + 1 }, (_, half) => now - half * (HOUR_MS / 2));
  const readings = (value: number) => at.map((moment) => ({ value, at: moment })).reverse();
  await daemon.publish(sensor, 'air-temperature', readings(20));
  await daemon.publish(sensor, 'relative-humidity', readings(60));
  await daemon.call('PATCH', `sensors/${sensor}`, { placeId: place.id });
  return { place, batch };
}
