import { describe, expect, it } from 'vitest';
import { build, hourMs, moment, withCoat } from './built-site.ts';

describe('the caution about oily rags', () => {
  it('comes with every coat, leaves the wall when seen, and comes again until it is ticked', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const [rags] = (await site.call('overview')).notices;
    expect(rags).toMatchObject({ kind: 'rags', subject: batch.id, seenAt: null });
    expect(rags?.text).toMatch(/catch fire.*Local rules come first/);

    const seen = await site.call('changeNotice', { id: rags?.id ?? '', body: { seen: true } });
    expect(seen.seenAt).toBe(moment(site.now));
    expect((await site.call('overview')).notices).toEqual([]);

    await site.watchNotices();
    expect((await site.call('overview')).notices).toEqual([]);
    site.now += 2 * hourMs;
    await site.watchNotices();
    const [again] = (await site.call('overview')).notices;
    expect(again).toMatchObject({ id: rags?.id, seenAt: null, repeats: 1, clearedAt: null });
    expect(again?.repeatedAt).toBe(moment(site.now));

    await site.call('tickLockUp', { body: { line: 'rags', by: 'the one at the door' } });
    const listed = await site.call('listNotices');
    expect(listed.find((one) => one.id === rags?.id)?.clearedAt).toBe(moment(site.now));
    site.now += 2 * hourMs;
    await site.watchNotices();
    const left = (await site.call('overview')).notices.map((notice) => notice.kind);
    expect(left).not.toContain('rags');
  });

  it('comes again with the next coat, also a moment after the last was seen', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const [first] = (await site.call('overview')).notices;
    await site.call('changeNotice', { id: first?.id ?? '', body: { seen: true } });
    const body = { coat: 1, finishedAt: moment(site.now) };
    const { id } = await site.call('createCoat', { id: batch.id, body });
    const [second] = (await site.call('overview')).notices;
    expect(second).toMatchObject({ kind: 'rags', seenAt: null });
    expect(second?.id).not.toBe(first?.id);

    // The same coat sent again is no new work.
    await site.call('changeNotice', { id: second?.id ?? '', body: { seen: true } });
    await site.call('createCoat', { id: batch.id, body: { ...body, id } });
    expect((await site.call('overview')).notices).toEqual([]);
  });

  it('is not cleared by anything that is measured', async () => {
    const site = await build();
    await withCoat(site);
    await site.watchNotices();
    const kinds = (await site.call('overview')).notices.map((notice) => notice.kind);
    expect(kinds).toContain('rags');
  });

  it('is only ever marked as seen', async () => {
    const site = await build();
    await withCoat(site);
    const [rags] = (await site.call('overview')).notices;
    const unseen = site.refused('changeNotice', { id: rags?.id ?? '', body: { seen: false } });
    expect(await unseen).toMatchObject({ status: 400, pointer: '/seen' });
  });
});
