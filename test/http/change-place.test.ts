import { describe, expect, it } from 'vitest';
import { build } from './built-site.ts';

describe('PATCH places/:id', () => {
  it('changes what is given, keeps the rest, and forgets what is null', async () => {
    const site = await build();
    const rack = await site.call('createPlace', {
      body: { name: 'Rack', kind: 'rack', capacityM: 90, capacityBoards: 40 },
    });
    const change = (body: object) => site.call('changePlace', { id: rack.id, body });
    expect(await change({ capacityM: 120 })).toEqual({ ...rack, capacityM: 120 });
    expect(await change({ name: 'Long rack', capacityBoards: null })).toEqual({
      ...rack,
      ...{ name: 'Long rack', capacityM: 120, capacityBoards: null },
    });
    expect((await site.call('readPlace', { id: rack.id })).name).toBe('Long rack');
  });

  it('does not make a rack a room, nor carry it elsewhere', async () => {
    const site = await build();
    const rack = await site.call('createPlace', { body: { name: 'Rack', kind: 'rack' } });
    for (const body of [{ kind: 'room' }, { within: rack.id }, { name: ' ' }]) {
      const problem = await site.refused('changePlace', { id: rack.id, body });
      expect(problem).toMatchObject({ status: 400, code: 'BC_REQUEST_INVALID' });
    }
  });
});
