import type { Publisher } from '../../sensors/publish/publisher.ts';
import {
  CART_SHED,
  type RackName,
  rackNames,
  SIMULATED_SENSORS,
} from '../../sensors/shed/cart-shed.ts';
import type { ShedOperator } from '../../sensors/shed/operator.ts';
import { READING_PERIOD_MS, type Shed } from '../../sensors/shed/shed.ts';
import type { Spot } from '../../sensors/shed/shed-plan.ts';
import type { Api } from './demo-api.ts';
import { demoOperator } from './demo-operator.ts';

const HOUR_MS = 3_600_000;

/** When the page comes to life: an invented afternoon in May. */
export const DEMO_BEGINS = Date.UTC(2026, 4, 12, 17);
/** By then the shed has been recorded for this long. */
export const RECORDED_MS = 98 * HOUR_MS;

const SENSOR_NAMES: Readonly<Record<string, string>> = {
  yard: 'Under the eaves outside',
  bench: 'Above the bench',
  'door-shelf': 'Middle shelf by the door',
  'door-pins': 'Pins in an offcut by the door',
  'window-shelf': 'Middle shelf by the window',
  'north-floor': 'Lowest shelf on the north wall',
  'back-shelf': 'Middle shelf at the back',
  'back-floor': 'Lowest shelf at the back',
};

/**
 * Carries the shed on to a moment and sends what its sensors read on the way.
 *
 * @param shed - the shed
 * @param publisher - takes the readings
 * @param at - UTC epoch ms
 */
export async function sendUntil(shed: Shed, publisher: Publisher, at: number): Promise<void> {
  // an hour at a time, so that a long way does not fill the memory
  while (shed.at() < at) {
    const reached = shed.at();
    const readings = shed.advanceTo(Math.min(at, reached + HOUR_MS));
    for (const reading of readings) await publisher.publish(reading);
    if (shed.at() === reached) return;
  }
}

/**
 * Lays the scenario out through the daemon's own doors: places, sensors, and four days of readings
 * and work that end at the beginning of the demo with four racks: one ready, one near it, one
 * on the way and one freshly coated.
 *
 * @param shed - at the start of the recording
 * @param publisher - to the daemon's broker
 * @param api - to the daemon's pages
 * @returns the operator, who knows what lies where
 */
export async function layOutHistory(
  shed: Shed,
  publisher: Publisher,
  api: Api,
): Promise<ShedOperator> {
  const start = shed.at();
  const until = async (at: number) => {
    await sendUntil(shed, publisher, at);
    await publisher.drained();
  };
  const hoursAgo = (hours: number) => until(DEMO_BEGINS - hours * HOUR_MS);

  /** A hand test, and the next coat some hours later where it passed. */
  const testAndCoat = async (rack: RackName, testedAgo: number, coatedAgo: number) => {
    await hoursAgo(testedAgo);
    const passed = await operator.test(rack, 'recoat');
    await hoursAgo(coatedAgo);
    if (passed) await operator.coat(rack);
  };

  // a sensor exists from its first reading
  await until(start + READING_PERIOD_MS);
  const operator = demoOperator(api, shed, await makePlaces(api));

  await hoursAgo(97);
  await operator.start('back');
  await hoursAgo(93);
  await operator.start('north');
  await hoursAgo(58);
  await operator.start('door');
  await hoursAgo(56);
  await operator.test('back', 'turn');
  await operator.test('north', 'turn');
  await hoursAgo(48);
  await operator.test('back', 'recoat');
  await hoursAgo(33);
  await operator.start('window');
  await hoursAgo(26);
  await operator.test('door', 'turn');
  await testAndCoat('north', 25, 20);
  await testAndCoat('back', 4, 2);
  await hoursAgo(0);
  return operator;
}

const RACK_NAMES: Readonly<Record<RackName, string>> = {
  door: 'Rack by the door',
  window: 'Rack by the window',
  north: 'Rack on the north wall',
  back: 'Rack at the back',
};

/** Six shelves of a dozen boards, each up to 5 m: what the made-up racks hold. */
const RACK_TAKES_M = 360;

async function makePlaces(api: Api): Promise<Record<RackName, string>> {
  await api('changeSite', { body: { name: 'Simulated shed' } });
  const yard = await api('createPlace', { body: { name: 'Yard', kind: 'outdoors' } });
  const room = await api('createPlace', {
    body: { name: 'Cart shed', kind: 'room', volumeM3: CART_SHED.build.volumeM3 },
  });
  const racks: Partial<Record<RackName, string>> = {};
  for (const rack of rackNames) {
    const named = { name: RACK_NAMES[rack], kind: 'rack' as const, within: room.id };
    const body = { ...named, capacityM: RACK_TAKES_M };
    racks[rack] = (await api('createPlace', { body })).id;
  }
  const placed = racks as Record<RackName, string>;
  const placeAt = (spot: Spot): string => {
    if (spot.kind === 'outdoors') return yard.id;
    return spot.kind === 'room' ? room.id : placed[spot.rack as RackName];
  };
  for (const { id, spot } of SIMULATED_SENSORS) {
    await api('changeSensor', {
      params: { id },
      body: { placeId: placeAt(spot), name: SENSOR_NAMES[id] ?? null },
    });
  }
  return placed;
}
