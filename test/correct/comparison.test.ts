import { describe, expect, it } from 'vitest';
import {
  type BoxQuantity,
  type BoxSeries,
  compareInBox,
} from '../../sensors/correct/comparison.ts';
import { seededRandom } from '../science/seeded-random.ts';

const minute = 60_000;
const start = Date.UTC(2026, 3, 1, 20);

interface Planted {
  name: string;
  offset: number;
  /** Change of the offset over a day. */
  perDay?: number;
  minutes?: number;
}

/** Cheap sensors in one closed box: slow swing of the room, noise and steps as such sensors have. */
function box(sensors: Planted[], { hours = 10, swingK = 0.5 } = {}): BoxSeries[] {
  const random = seededRandom(5);
  return sensors.map(({ name, offset, perDay = 0, minutes = 5 }) => ({
    sensor: name,
    points: Array.from({ length: (hours * 60) / minutes }, (_, i) => {
      const hour = (i * minutes) / 60;
      const truth = 17 + swingK * Math.sin(hour / 2);
      const noise = 0.1 * (random() + random() - 1);
      const value = truth + offset + (perDay * hour) / 24 + noise;
      return { at: start + i * minutes * minute, value: Math.round(value * 100) / 100 };
    }),
  }));
}

const compare = (series: BoxSeries[], quantity: BoxQuantity = 'air-temperature') =>
  compareInBox(quantity, series);

const night: Planted[] = [
  { name: 'a', offset: 0.1 },
  { name: 'b', offset: -0.1 },
  { name: 'c', offset: 0 },
  { name: 'd', offset: 1.8 },
];

describe('all nodes in one closed box over night', () => {
  it('name the odd one out, and how far it stands apart', () => {
    const { refused, says, sensors } = compare(box(night));
    expect(refused).toBeNull();
    expect(sensors.filter(({ isOdd }) => isOdd).map(({ sensor }) => sensor)).toEqual(['d']);
    expect(says).toContain('d is the odd one out: 1.8 °C above the others.');
  });

  it('tell each offset against those that keep together, within what they say of themselves', () => {
    const { sensors } = compare(box(night));
    for (const { sensor, difference, uncertainty } of sensors) {
      const planted = night.find(({ name }) => name === sensor)?.offset ?? Number.NaN;
      expect(Math.abs(difference - planted), sensor).toBeLessThan(uncertainty);
      expect(uncertainty).toBeLessThan(0.2);
    }
  });

  it('have no odd one where all keep together, however often each one sends', () => {
    const { says, sensors } = compare(
      box([
        { name: 'a', offset: 0.2, minutes: 1 },
        { name: 'b', offset: -0.1, minutes: 10 },
        { name: 'c', offset: 0, minutes: 5 },
      ]),
    );
    expect(sensors.some(({ isOdd, wanders }) => isOdd || wanders)).toBe(false);
    expect(says).toMatch(/^All 3 keep together/);
  });

  it('find the odd one of three, and two odd ones of five', () => {
    const odd = (planted: Planted[]) =>
      compare(box(planted)).sensors.flatMap(({ sensor, isOdd }) => (isOdd ? [sensor] : []));
    expect(odd(night.slice(1))).toEqual(['d']);
    expect(odd([...night, { name: 'e', offset: -3 }])).toEqual(['d', 'e']);
  });

  it('show who wanders, for no offset mends that', () => {
    const { sensors, says } = compare(box([...night, { name: 'w', offset: 0, perDay: 4 }]));
    expect(sensors.find(({ sensor }) => sensor === 'w')?.wanders).toBe(true);
    expect(sensors.filter(({ wanders }) => wanders)).toHaveLength(1);
    expect(says).toContain('w is the odd one out: it wanders');
  });
});

describe('no offset is offered', () => {
  it('where only two lay there: nobody can tell which is wrong', () => {
    const { refused, says, sensors } = compare(box(night.slice(2)));
    expect(refused).toBe('only-two');
    expect(says).toContain('1.8');
    expect(sensors.some(({ isOdd }) => isOdd)).toBe(false);
  });
  it('where they scatter and no majority keeps together', () => {
    const spread = [0, 2, 4.5, 7].map((offset, i) => ({ name: `s${i}`, offset }));
    expect(compare(box(spread)).refused).toBe('no-majority');
  });
  it('after two hours', () => {
    expect(compare(box(night, { hours: 2 })).refused).toBe('too-short');
  });
  it('where the box stood in the sun', () => {
    expect(compare(box(night, { swingK: 9 })).refused).toBe('not-steady');
  });
  it('without readings of one of them', () => {
    const silent: BoxSeries[] = [...box(night), { sensor: 'x', points: [] }];
    expect(compare(silent)).toMatchObject({ refused: 'no-readings' });
  });
});
