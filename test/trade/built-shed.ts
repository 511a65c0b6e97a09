import { type BuiltSite, boards, build, hourMs, moment } from '../http/built-site.ts';

/** A room at 20 °C with two racks, the second 8 °C colder, for ten days back. */
export async function builtShed() {
  const site = await build();
  const room = await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
  const rack = async (name: string, body: object = {}) =>
    site.call('createPlace', { body: { name, kind: 'rack', within: room.id, ...body } });
  const north = await rack('North rack');
  const south = await rack('South rack', { capacityM: 150 });
  await hear(site, 'n1', north.id, 20);
  await hear(site, 's1', south.id, 12);
  return { site, room, north, south };
}

async function hear(site: BuiltSite, sensor: string, placeId: string, tempC: number) {
  const hours = Array.from({ length: 241 }, (_, i) => site.now - (240 - i) * hourMs);
  await site.hear(
    sensor,
    'air-temperature',
    hours.map((at) => [at, tempC]),
  );
  await site.hear(
    sensor,
    'relative-humidity',
    hours.map((at) => [at, 60]),
  );
  await site.call('changeSensor', { id: sensor, body: { placeId } });
}

export async function batchAt(site: BuiltSite, placeId: string, more: object = {}) {
  return site.call('createBatch', {
    body: {
      ...{ name: 'South gable', placeId, species: 'norway-spruce', surface: 'sawn' },
      ...{ boards: { ...boards, count: 60 }, ...more },
    },
  });
}

/** Hours before the site’s now, as the API takes them. */
export const ago = (site: BuiltSite, hours: number) => moment(site.now - hours * hourMs);
