import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlaceFact } from '../../daemon/rules/facts.ts';
import { airSources, placesFed, sensorsHeard, stayAt } from '../../daemon/rules/place.ts';
import {
  type HeardReading,
  moments,
  placeSeries,
  type Speaker,
} from '../../daemon/rules/place-series.ts';

const none = { volumeM3: null, facing: null, exposure: null, createdAt: 0 };
const place = (id: string, kind: PlaceFact['kind'], within: string | null): [string, PlaceFact] => [
  id,
  { id, name: id, kind, within, ...none },
];
const places = new Map([
  place('yard', 'outdoors', null),
  place('shed', 'room', 'yard'),
  place('rack', 'rack', 'shed'),
  place('wall', 'wall', 'yard'),
]);

describe('whose sensors speak for a place', () => {
  it('its own, then those of what encloses it, never outdoors for a room or a rack', () => {
    expect(airSources(places, 'rack')).toEqual(['rack', 'shed']);
    expect(airSources(places, 'shed')).toEqual(['shed']);
    expect(airSources(places, 'yard')).toEqual(['yard']);
    expect(placesFed(places, 'shed')).toEqual(['shed', 'rack']);
  });

  it('outdoors for a wall', () => {
    expect(airSources(places, 'wall')).toEqual(['wall', 'yard']);
    expect(placesFed(places, 'yard')).toEqual(['yard', 'wall']);
  });

  it('ends when a circle was recorded by mistake', () => {
    const circle = new Map([place('a', 'room', 'b'), place('b', 'room', 'a')]);
    expect(airSources(circle, 'a')).toEqual(['a', 'b']);
  });
});

describe('where a sensor sat', () => {
  const stays = [
    { sensorKey: 1, placeId: 'rack', fromAt: 100 },
    { sensorKey: 1, placeId: 'shed', fromAt: null },
    { sensorKey: 1, placeId: null, fromAt: 200 },
  ];
  it('is told by the last stay that had begun; the first holds from ever', () => {
    expect(stayAt(stays, -1e12)).toEqual({ placeId: 'shed', fromAt: null, untilAt: 100 });
    expect(stayAt(stays, 100)).toEqual({ placeId: 'rack', fromAt: 100, untilAt: 200 });
    expect(stayAt(stays, 200)).toBeNull();
    expect(stayAt([], 0)).toBeNull();
  });

  it('is heard from afar with its distance', () => {
    expect(sensorsHeard(places, new Map([[1, stays]]), 'rack')).toEqual([
      { sensorKey: 1, level: 1, fromAt: null, untilAt: 100 },
      { sensorKey: 1, level: 0, fromAt: 100, untilAt: 200 },
    ]);
  });
});

describe('the air of a place with several sensors', () => {
  const said = (sensorKey: number, at: number, value: number, level = 0): HeardReading => ({
    sensorKey,
    at,
    value,
    level,
    untilAt: null,
  });
  const series = (readings: readonly HeardReading[], speaker: Speaker) => [
    ...placeSeries(moments(readings), 10, speaker),
  ];

  it('is that of the coldest, or of the dampest', () => {
    const readings = [said(1, 0, 20), said(2, 1, 18), said(1, 2, 21)];
    expect(series(readings, 'lowest')).toEqual([
      { at: 0, value: 20 },
      { at: 1, value: 18 },
      { at: 2, value: 18 },
    ]);
    expect(series(readings, 'highest').map((one) => one.value)).toEqual([20, 20, 21]);
  });

  it('does not hang on the order in which equal times arrive', () => {
    const readings = [said(2, 5, 18), said(1, 5, 20), said(1, 7, 20)];
    const turned = [...readings].reverse();
    expect(series(readings, 'lowest')).toEqual(series(turned, 'lowest'));
  });

  it('is heard from the enclosing place only while its own sensors are silent', () => {
    const readings = [said(9, 0, 25, 1), said(1, 1, 20), said(9, 2, 25, 1), said(9, 13, 26, 1)];
    expect(series(readings, 'lowest')).toEqual([
      { at: 0, value: 25 },
      { at: 1, value: 20 },
      { at: 13, value: 26 },
    ]);
  });

  it('is what looking at every sensor at every moment gives, however many there are', () => {
    const heard = fc.record({
      sensorKey: fc.integer({ min: 1, max: 6 }),
      at: fc.integer({ min: 0, max: 60 }),
      value: fc.integer({ min: 15, max: 18 }),
      stay: fc.integer({ min: 1, max: 40 }),
    });
    const speakers = fc.constantFrom<Speaker>('lowest', 'highest');
    fc.assert(
      fc.property(fc.array(heard, { maxLength: 80 }), speakers, (all, speaker) => {
        const readings = [
          ...new Map(all.map((one) => [`${one.sensorKey} ${one.at}`, one])).values(),
        ]
          // Each third sensor leaves now and then.
          .map(({ sensorKey, at, value, stay }): HeardReading => {
            const untilAt = sensorKey % 3 === 0 ? at + stay : null;
            return { sensorKey, at, value, level: sensorKey % 2, untilAt };
          });
        const plain = [...new Set(readings.map(({ at }) => at))]
          .sort((a, b) => a - b)
          .flatMap((at) => {
            const newest = [1, 2, 3, 4, 5, 6].flatMap((key) =>
              readings
                .filter((one) => one.sensorKey === key && one.at <= at)
                .sort((a, b) => a.at - b.at)
                .slice(-1),
            );
            const standing = newest.filter(
              (one) => at - one.at <= 10 && (one.untilAt === null || one.untilAt > at),
            );
            const level = Math.min(...standing.map((one) => one.level));
            const near = standing.filter((one) => one.level === level);
            if (!near.some((one) => one.at === at)) return [];
            const values = near.map((one) => one.value);
            return [
              { at, value: speaker === 'lowest' ? Math.min(...values) : Math.max(...values) },
            ];
          });
        expect(series(readings, speaker)).toEqual(plain);
      }),
    );
  });

  it('drops a sensor when it leaves', () => {
    const leaving = { ...said(1, 0, 10), untilAt: 3 };
    const readings = [leaving, said(2, 1, 20), said(2, 3, 20)];
    expect(series(readings, 'lowest').map((one) => one.value)).toEqual([10, 10, 20]);
  });
});
