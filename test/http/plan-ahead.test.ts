import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { build, hourMs, withCoat } from './built-site.ts';

const dayMs = 24 * hourMs;

describe('GET plan-ahead', () => {
  it('goes on from the coat that cures: mounts it, coats it again, and says how sure that is', async () => {
    const site = await build();
    const { batch, room } = await withCoat(site);
    await site.call('createPlace', { body: { name: 'South wall', kind: 'wall' } });
    const plan = await site.call('planAhead');
    const [ahead] = plan.batches;
    expect(ahead?.batchId).toBe(batch.id);
    expect(ahead?.steps.map((step) => [step.kind, step.name])).toEqual([
      ['mount', 'Primer'],
      ['coat', 'Second coat'],
      ['coat', 'Last coat'],
    ]);
    const [mount] = ahead?.steps ?? [];
    const at = (time: string | null | undefined) => Date.parse(time ?? '');
    expect(at(mount?.begins.early)).toBeLessThanOrEqual(at(mount?.begins.likely));
    expect(at(mount?.begins.likely)).toBeLessThanOrEqual(at(mount?.begins.late));
    expect(at(mount?.begins.early)).toBeGreaterThanOrEqual(site.now);
    // A wall without a sensor and without air outdoors: nothing is known there.
    expect(ahead?.steps[1]?.begins.likely).toBeNull();
    expect(plan.grounds.map(({ code }) => code)).toContain('place-unknown');
    expect(room.id).not.toBe(ahead?.steps[1]?.placeId);
  });

  it('without a wall finishes the boards on the rack, at 20 °C by hand', async () => {
    const site = await build();
    await withCoat(site);
    const plan = await site.call('planAhead');
    const steps = plan.batches[0]?.steps ?? [];
    expect(steps.map((step) => step.kind)).toEqual(['coat', 'coat']);
    const likely = steps.map((step) => Date.parse(step.begins.likely ?? ''));
    // About 58.8 h at 20 °C each (the middle of 2 to 3 days), then the next working hours.
    const between = ((likely[1] ?? 0) - (likely[0] ?? 0)) / dayMs;
    expect(between).toBeGreaterThan(2.4);
    expect(between).toBeLessThan(5.2);
    expect(plan.order?.gapDays).not.toBeNull();
  });

  it('answers for boards that are not here yet, and records nothing', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const before = await site.call('planAhead');
    const asked = await site.call('planAhead', { query: { boards: '400' } });
    expect(asked.batches.map((one) => one.batchId).sort()).toEqual([batch.id, null].sort());
    expect(asked.done?.boards).toBe((before.done?.boards ?? 0) + 400);
    expect(Date.parse(asked.done?.likely ?? '')).toBeGreaterThan(
      Date.parse(before.done?.likely ?? ''),
    );
    expect(await site.call('listBatches')).toHaveLength(1);
  });

  it('divides what the racks cannot hold, and keeps to them', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const metres = (batch.boards.count * batch.boards.lengthMm) / 1000;
    await site.call('createPlace', { body: { name: 'Rack', kind: 'rack', capacityM: metres } });
    const plan = await site.call('planAhead', {
      query: { boards: String(3 * batch.boards.count) },
    });
    expect(plan.racks.capacityM).toBe(metres);
    const lots = plan.batches.filter((one) => one.batchId === null);
    expect(lots.map((lot) => lot.boards)).toEqual(Array(3).fill(batch.boards.count));
    expect(plan.grounds.map(({ code }) => code)).toContain('in-parts');
  });

  it('points at what it cannot know', async () => {
    const site = await build();
    await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
    const problem = await site.refused('planAhead', { query: { boards: '40' } });
    expect(problem).toMatchObject({
      status: 400,
      code: 'BC_REQUEST_INVALID',
      pointer: '/lengthMm',
    });
    const size = { boards: '40', lengthMm: '3000', widthMm: '145', thicknessMm: '22' };
    expect((await site.call('planAhead', { query: size })).batches).toHaveLength(1);
  });
});

describe('the calendar that a phone follows', () => {
  // Read by another library than the one that writes it; RFC 5545.
  it('holds each job as a whole day, under a name that stays', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const read = async () => {
      const reply = await site.app.inject({ url: '/api/v1/plan-ahead.ics' });
      expect(reply.headers['content-type']).toBe('text/calendar; charset=utf-8');
      const calendar = new ICAL.Component(ICAL.parse(reply.body));
      return calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    };
    const events = await read();
    const plan = await site.call('planAhead');
    const steps = plan.batches[0]?.steps ?? [];
    expect(events).toHaveLength(steps.length);
    const [first] = events;
    expect(first?.summary).toBe(`Second coat: ${batch.name} (${batch.boards.count} boards)`);
    expect(first?.startDate.isDate).toBe(true);
    expect(first?.startDate.toString()).toBe(steps[0]?.begins.likely?.slice(0, 10));
    expect(first?.description).toMatch(/Early .*, likely .*, late .*Feel it before you go on\./);
    site.now += hourMs;
    expect((await read()).map((event) => event.uid)).toEqual(events.map((event) => event.uid));
  });

  it('keeps names that would break it apart', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const name = 'Gable; north,\\ upper \r\nEND:VEVENT';
    await site.call('changeBatch', { id: batch.id, body: { name } });
    const reply = await site.app.inject({ url: '/api/v1/plan-ahead.ics' });
    const calendar = new ICAL.Component(ICAL.parse(reply.body));
    const [first] = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(first?.summary).toContain('Gable; north,\\ upper');
  });
});
