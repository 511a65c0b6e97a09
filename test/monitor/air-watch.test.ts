import { afterEach, describe, expect, it } from 'vitest';
import { relativeHumidity } from '../../daemon/science/air.ts';
import { openSite, type TestSite } from './site.ts';

const minute = 60_000;
const hour = 60 * minute;
const start = Date.UTC(2026, 3, 1);
let site: TestSite | null = null;
afterEach(() => {
  site?.close();
  site = null;
});

/** Vapour outdoors, g/m³: a weather of our own that swings with the day and with passing fronts. */
const outsideGM3 = (at: number) =>
  8 + 1.5 * Math.sin((at - start) / (4 * hour)) + Math.sin((at - start) / (1.3 * hour));

/** A day and a half of a room whose air is changed so often; vapour balance of a well-mixed room. */
function room(perHour: number, rackExcessGM3 = 0, withOutdoors = true, withBoards = false) {
  const one = openSite();
  site = one;
  const yard = one.place('Yard', 'outdoors');
  const shed = one.place('Shed', 'room', yard);
  const rack = one.place('Rack', 'rack', shed);
  const tempC = 18;
  let insideGM3 = 9;
  const readings: Parameters<TestSite['send']>[0] = [];
  const end = start + 36 * hour;
  for (let at = start; at <= end; at += 5 * minute) {
    const both = (sensor: string, gM3: number) => {
      readings.push({ sensor, at, value: tempC });
      const rh = Math.round(relativeHumidity(tempC, gM3) * 10) / 10;
      readings.push({ sensor, at, value: rh, quantity: 'relative-humidity' });
    };
    if (withOutdoors) both('yard', outsideGM3(at));
    both('shed', insideGM3);
    both('rack', insideGM3 + rackExcessGM3);
    for (let step = 0; step < 5; step++) {
      insideGM3 += (perHour / 60) * (outsideGM3(at + step * minute) - insideGM3);
    }
  }
  one.send(readings);
  if (withOutdoors) one.put('yard', yard);
  one.put('shed', shed);
  one.put('rack', rack);
  if (withBoards) one.batch(rack);
  const at = (placeId: string) => {
    const place = one.monitor.overview(end).find((each) => each.id === placeId);
    if (!place) throw new Error('no such place');
    return place;
  };
  return { shed: at(shed), rack: at(rack) };
}

describe('the air of a room, from its vapour against outdoors', () => {
  it('is good at two changes an hour, and the estimate is near', () => {
    const { shed } = room(2);
    expect(shed.airflow).toBe('good');
    expect(shed.airChange?.perHour).toBeGreaterThan(1.6);
    expect(shed.airChange?.perHour).toBeLessThan(2.4);
  });

  it('is poor at a quarter of a change an hour', () => {
    const { shed } = room(0.25);
    expect(shed.airflow).toBe('poor');
    expect(shed.airReasons[0]?.code).toBe('air-changes-few');
  });

  it('is not called poor for that alone while boards lie there', () => {
    const { shed } = room(0.25, 0, true, true);
    expect(shed.airflow).toBe('cannot-tell');
    expect(shed.airChange?.perHour).toBeLessThan(0.4);
  });

  it('cannot be told without outdoors', () => {
    const { shed } = room(2, 0, false);
    expect(shed).toMatchObject({ airflow: 'cannot-tell', airChange: null });
  });
});

describe('the air of a room, from carbon dioxide', () => {
  it('is told also while boards lie there, which hold back vapour but not that', () => {
    const one = openSite();
    site = one;
    const shed = one.place('Shed', 'room');
    one.batch(shed);
    let ppm = 500;
    const readings: Parameters<TestSite['send']>[0] = [];
    const end = start + 30 * hour;
    for (let at = start; at <= end; at += 5 * minute) {
      readings.push({ sensor: 'a', at, value: 18 });
      readings.push({ sensor: 'a', at, value: Math.round(ppm), quantity: 'carbon-dioxide' });
      // Someone works there for two hours in six; a quarter of the air is changed an hour.
      const working = Math.floor((at - start) / (2 * hour)) % 3 === 0;
      ppm += ((0.25 * (425 - ppm) + (working ? 300 : 0)) * 5) / 60;
    }
    one.send(readings);
    one.put('a', shed);
    const place = one.monitor.overview(end).find((each) => each.id === shed);
    // A source that comes and goes is no steady one: where it does not fit, that is said.
    if (place?.airChange) expect(place.airChange.perHour).toBeLessThan(0.5);
    else expect(place?.airflow).toBe('cannot-tell');
  });

  it('is poor where a high level dies away at a fifth an hour', () => {
    const one = openSite();
    site = one;
    const shed = one.place('Shed', 'room');
    one.batch(shed);
    const readings: Parameters<TestSite['send']>[0] = [];
    const end = start + 20 * hour;
    for (let at = start; at <= end; at += 5 * minute) {
      const ppm = 425 + 1500 * Math.exp((-0.2 * (at - start)) / hour);
      readings.push({ sensor: 'a', at, value: 18 });
      readings.push({ sensor: 'a', at, value: Math.round(ppm), quantity: 'carbon-dioxide' });
    }
    one.send(readings);
    one.put('a', shed);
    const place = one.monitor.overview(end).find((each) => each.id === shed);
    expect(place?.airChange?.perHour).toBeGreaterThan(0.17);
    expect(place?.airChange?.perHour).toBeLessThan(0.23);
    expect(place?.airflow).toBe('poor');
  });
});

describe('the air of a rack', () => {
  it('is that of its room while it is no moister', () => {
    expect(room(2).rack.airflow).toBe('good');
  });
  it('is poor where it stays moister than its room', () => {
    const { rack, shed } = room(2, 2);
    expect(rack.airflow).toBe('poor');
    expect(rack.airReasons[0]?.code).toBe('air-stagnant');
    expect(shed.airflow).toBe('good');
  });
});
