import { v7 as newId } from 'uuid';
import { describe, expect, it } from 'vitest';
import type { TopicRuleFact } from '../../daemon/rules/topic-rule-fact.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { day1, group, hourMs, place, reading } from './site-of-facts.ts';
import { timeUnknown } from './store-sides.ts';

const rule = (given: Partial<TopicRuleFact> = {}): TopicRuleFact => ({
  id: newId(),
  order: 10,
  form: {
    pattern: 'farm/{sensor}/temp',
    sensor: '{sensor}',
    payload: 'text',
    values: [
      ...[{ quantity: 'air-temperature' as const, pointer: '', name: '', unit: null, scale: 1 }],
    ].map((value) => ({ ...value, sensor: null })),
    time: null,
  },
  createdAt: day1,
  changedAt: day1,
  ...given,
});

function open(maxSensors?: number) {
  const db = openForWriting(':memory:');
  return { db, write: storeWriter(db, timeUnknown, maxSensors), read: storeReader(db) };
}

describe('topic rules', () => {
  it('come back as they were, in their order', () => {
    const { write, read } = open();
    const [late, early, same] = [rule({ order: 20 }), rule(), rule({ createdAt: day1 + 1 })];
    for (const one of [late, early, same]) write.createTopicRule(one, []);
    expect(read.topicRules()).toEqual([early, { ...same, changedAt: day1 + 1 }, late]);
  });

  it('keep what they were when they are changed or taken away', () => {
    const { db, write, read } = open();
    const first = rule();
    write.createTopicRule(first, []);
    const changed = { ...first, order: 5, form: { ...first.form, sensor: 'n-{sensor}' } };
    write.changeTopicRule(changed, day1 + hourMs);
    expect(read.topicRules()).toEqual([{ ...changed, changedAt: day1 + hourMs }]);
    write.removeTopicRule(first.id, day1 + 2 * hourMs);
    expect(read.topicRules()).toEqual([]);
    const rows = db
      .prepare('select recorded_at, superseded_at from topic_rule order by rank')
      .all();
    expect(rows).toEqual([
      { recorded_at: day1, superseded_at: day1 + hourMs },
      { recorded_at: day1 + hourMs, superseded_at: day1 + 2 * hourMs },
    ]);
    expect(
      db.prepare("select what from change where subject = 'topic rule'").pluck().all(),
    ).toEqual([...['created', 'changed', 'taken away']]);
  });

  it('have sensors that were heard hang from ever, so that their first reading counts', () => {
    const { write, read } = open();
    const room = place();
    write.createPlace(room);
    write.createTopicRule(rule(), [{ id: 'attic', placeId: room.id, heardAt: day1 - 5 }]);
    const sensor = read.sensorById('attic');
    expect(sensor).toMatchObject({ firstSeenAt: day1 - 5 });
    expect(read.sensorStays()).toEqual([
      { sensorKey: sensor?.key, placeId: room.id, fromAt: null },
    ]);
    const committed = write.commitReadings(group(reading('attic', day1, 20)));
    expect(committed).toMatchObject({ newSensors: [], fresh: [{ sensorKey: sensor?.key }] });
  });

  it('mark the hours anew of a sensor that had spoken before it was placed', () => {
    const { write, read } = open();
    const room = place();
    write.createPlace(room);
    write.commitReadings(group(reading('attic', day1, 20)));
    write.createTopicRule(rule(), [{ id: 'attic', placeId: room.id, heardAt: day1 }]);
    expect(read.dirtySpans()).toMatchObject([{ placeId: room.id, fromAt: day1, toAt: day1 }]);
  });

  it('make no more sensors than are allowed', () => {
    const { write, read } = open(1);
    const room = place();
    write.createPlace(room);
    const heard = ['a', 'b'].map((id) => ({ id, placeId: room.id, heardAt: day1 }));
    write.createTopicRule(rule(), heard);
    expect(read.sensors().map(({ id }) => id)).toEqual(['a']);
    expect(read.topicRules()).toHaveLength(1);
  });
});
