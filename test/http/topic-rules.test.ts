import { describe, expect, it } from 'vitest';
import type { Sentence } from '../../daemon/contract/sentence.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';
import { type BuiltSite, build } from './built-site.ts';

const rule = {
  pattern: 'farm/{sensor}/temp',
  sensor: '{sensor}',
  payload: 'text',
  values: [{ quantity: 'air-temperature' }],
};
const pointers = (problem: { errors?: { pointer: string }[] | undefined }) =>
  problem.errors?.map(({ pointer }) => pointer);

async function withRoom(): Promise<{ site: BuiltSite; roomId: string }> {
  const site = await build();
  const room = await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
  return { site, roomId: room.id };
}

describe('a topic that nobody knows', () => {
  it('is listed with its last message and what it may be, until a rule takes it', async () => {
    const { site, roomId } = await withRoom();
    for (const text of ['17.1', '17.2']) site.message('farm/attic/temp', text);
    site.message('farm/door', 'open');
    const before = await site.call('foundTopics');
    expect(before).toMatchObject({ otherTopics: 1, leftOut: 0, listening: { always: true } });
    expect(before.topics).toMatchObject([
      {
        topic: 'farm/attic/temp',
        count: 2,
        last: { text: '17.2', bytes: 4, retained: false },
        values: [{ guess: { quantity: 'air-temperature', value: 17.2 } }],
      },
    ]);
    const [found] = before.topics;
    await site.call('createTopicRule', { body: { ...found?.suggestion, placeId: roomId } });
    expect((await site.call('foundTopics')).topics).toEqual([]);
    // The sensor hangs there before its next message comes.
    expect(await site.call('listSensors')).toMatchObject([
      { id: 'farm-attic', placeId: roomId, latest: [] },
    ]);
    expect(site.message('farm/attic/temp', '17.3')).toMatchObject({
      readings: [{ sensor: 'farm-attic', quantity: 'air-temperature', value: 17.3 }],
    });
  });

  it('is not one that a site’s daemon publishes, nor the broker’s', async () => {
    const { site } = await withRoom();
    for (const topic of [
      'boardcure/shed/status',
      'boardcure/barn/batch/019a',
      'boardcure/barn/place/019a',
      'boardcure/shed/notice',
      'boardcure/shed/digest',
      'boardcure/shed/forecast/outdoors',
      '$SYS/broker/load',
    ]) {
      site.message(topic, '{"temp":3}');
    }
    expect((await site.call('foundTopics')).topics).toEqual([]);
    site.message('boardcure/barn/sensor/n1/air-temperature', '3');
    expect((await site.call('foundTopics')).topics).toMatchObject([
      { suggestion: { sensor: 'barn-n1', pattern: 'boardcure/barn/sensor/n1/air-temperature' } },
    ]);
  });

  it('is shown printable, whatever it sent', async () => {
    const { site } = await withRoom();
    site.message('farm/x', '{"t":3,"n":"\u202e\u200b\u009b"}');
    const [found] = (await site.call('foundTopics')).topics;
    expect(found?.last.text).toBe('{"t":3,"n":"···"}');
  });
});

describe('a rule', () => {
  it('is tried against the last messages before it is saved', async () => {
    const { site } = await withRoom();
    site.message('farm/attic/temp', '17.2');
    site.message('farm/attic/temp', '70.7 °F');
    site.message('farm/cellar/temp', 'warm');
    site.message('farm/attic/hum', '55');
    const trial = await site.call('tryTopicRule', { body: { rule } });
    expect(trial).toMatchObject({ faults: [], topics: 2, takenByOthers: 0 });
    const told = trial.tried.map(({ message, readings, refused }) => [
      message.topic,
      message.text,
      readings[0]?.value ?? refused[0]?.code,
    ]);
    expect(told).toHaveLength(3);
    expect(told).toEqual(
      expect.arrayContaining([
        ['farm/attic/temp', '70.7 °F', 21.5],
        ['farm/attic/temp', '17.2', 17.2],
        ['farm/cellar/temp', 'warm', 'payload-not-a-number'],
      ]),
    );
    expect(await site.call('listTopicRules')).toEqual([]);
    expect(await site.call('listSensors')).toEqual([]);
  });

  it('is tried against messages that are given', async () => {
    const { site } = await withRoom();
    const messages = [
      { topic: 'farm/attic/temp', payload: '3,5' },
      { topic: 'elsewhere', payload: '3,5' },
    ];
    const { tried } = await site.call('tryTopicRule', { body: { rule, messages } });
    expect(tried).toMatchObject([
      { readings: [{ sensor: 'attic', value: 3.5 }], refused: [] },
      { readings: [], refused: [{ code: 'topic-not-understood' }] },
    ]);
  });

  it('that is faulty tells every fault at once: trying lists them, saving refuses', async () => {
    const { site } = await withRoom();
    const faulty = {
      ...rule,
      pattern: '#',
      sensor: '{room}',
      values: [{ quantity: 'air-temperature', unit: 'V' }],
    };
    const trial = await site.call('tryTopicRule', { body: { rule: faulty } });
    const where = ['/pattern', '/sensor', '/values/0/unit'];
    expect(trial.faults.map(({ pointer }) => pointer)).toEqual(where);
    expect(trial.tried).toEqual([]);
    const problem = await site.refused('createTopicRule', { body: faulty });
    expect(problem).toMatchObject({ status: 400, code: 'BC_REQUEST_INVALID', pointer: '/pattern' });
    expect(pointers(problem)).toEqual(where);
    expect(problem.errors?.[2]?.detail).toContain('means a voltage');
    expect(problem.errors?.[2]?.detailSaid).toEqual(trial.faults[2]?.detailSaid);
    const german = siteVoice('de', 'UTC');
    expect(trial.faults.map(({ detailSaid }) => german(detailSaid))[2]).toContain(
      'meint eine Spannung',
    );
    expect(german(problem.detailSaid as Sentence)).toMatch(/^In der Regel: .*\/values\/0\/unit: /);
    const made = await site.call('createTopicRule', { body: rule });
    const changed = await site.refused('changeTopicRule', {
      id: made.id,
      body: { pattern: '{sensor}/#' },
    });
    expect(pointers(changed)).toEqual(['/pattern']);
    expect(await site.call('listTopicRules')).toEqual([made]);
  });

  it('arrives once under its id, and not twice for the same topics', async () => {
    const { site } = await withRoom();
    const id = '019a0000-0000-7000-8000-000000000001';
    await site.call('createTopicRule', { body: { id, ...rule } });
    await site.call('createTopicRule', { body: { id, ...rule } });
    expect(await site.call('listTopicRules')).toHaveLength(1);
    const other = await site.refused('createTopicRule', { body: { id, ...rule, sensor: 'x' } });
    expect(other).toMatchObject({ code: 'BC_ID_TAKEN' });
    const twin = await site.refused('createTopicRule', {
      body: { ...rule, pattern: 'farm/{other}/temp', sensor: '{other}' },
    });
    expect(pointers(twin)).toEqual(['/pattern']);
    expect(twin.detail).toContain('takes exactly these topics');
  });

  it('is asked in its order, says when an earlier one hides it, and can be put before', async () => {
    const { site } = await withRoom();
    const wide = await site.call('createTopicRule', {
      body: { ...rule, pattern: 'farm/{sensor}/+' },
    });
    const narrow = await site.call('createTopicRule', { body: { ...rule, sensor: 'n-{sensor}' } });
    expect(narrow).toMatchObject({ hiddenBy: wide.id });
    expect(site.message('farm/a/temp', '3')).toMatchObject({ readings: [{ sensor: 'a' }] });
    const moved = await site.call('changeTopicRule', {
      id: narrow.id,
      body: { order: wide.order - 1 },
    });
    expect(moved.hiddenBy).toBeNull();
    expect(site.message('farm/a/temp', '3')).toMatchObject({ readings: [{ sensor: 'n-a' }] });
    expect((await site.call('listTopicRules')).map(({ id }) => id)).toEqual([narrow.id, wide.id]);
  });

  it('can be tried as a change of one that is there, on what that one takes', async () => {
    const { site } = await withRoom();
    const made = await site.call('createTopicRule', { body: rule });
    site.message('farm/attic/temp', '70.7');
    const changed = { ...rule, values: [{ quantity: 'air-temperature', unit: '°F' }] };
    const asNew = await site.call('tryTopicRule', { body: { rule: changed } });
    expect(asNew).toMatchObject({ topics: 0, takenByOthers: 1, faults: [{ pointer: '/pattern' }] });
    const asChange = await site.call('tryTopicRule', { body: { rule: changed, id: made.id } });
    expect(asChange).toMatchObject({
      faults: [],
      topics: 1,
      tried: [{ readings: [{ value: 21.5 }] }],
    });
  });

  it('that is taken away lets its topic be found again', async () => {
    const { site } = await withRoom();
    const made = await site.call('createTopicRule', { body: rule });
    site.message('farm/attic/temp', '17.2');
    expect(await site.call('removeTopicRule', { id: made.id })).toEqual([]);
    expect(site.message('farm/attic/temp', '17.3')).toEqual({ kind: 'not-ours' });
    expect((await site.call('foundTopics')).topics).toMatchObject([{ topic: 'farm/attic/temp' }]);
    const again = await site.refused('createTopicRule', { body: { id: made.id, ...rule } });
    expect(again.code).toBe('BC_ID_TAKEN');
  });

  it('leaves a sensor where it hangs, and names a place that is not there', async () => {
    const { site, roomId } = await withRoom();
    const rack = await site.call('createPlace', { body: { name: 'Rack', kind: 'rack' } });
    await site.hear('attic', 'air-temperature', [[site.now, 3]]);
    await site.call('changeSensor', { id: 'attic', body: { placeId: rack.id } });
    site.message('farm/attic/temp', '17.2');
    const nowhere = '019a0000-0000-7000-8000-00000000000f';
    const problem = await site.refused('createTopicRule', { body: { ...rule, placeId: nowhere } });
    expect(problem).toMatchObject({ code: 'BC_REFERENCE_UNKNOWN', pointer: '/placeId' });
    await site.call('createTopicRule', { body: { ...rule, placeId: roomId } });
    expect(await site.call('listSensors')).toMatchObject([{ id: 'attic', placeId: rack.id }]);
  });
});
