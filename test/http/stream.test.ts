import type { AddressInfo } from 'node:net';
import { describe, expect, it } from 'vitest';
import { StreamEvent } from '../../daemon/contract/stream-event.ts';
import { type BuiltSite, build, moment, withCoat } from './built-site.ts';

/** Opens the stream over a real connection and reads its events one by one. */
async function listen(site: BuiltSite) {
  await site.app.listen({ host: '127.0.0.1', port: 0 });
  const { port } = site.app.server.address() as AddressInfo;
  const reply = await fetch(`http://127.0.0.1:${port}/api/v1/stream`);
  const reader = reply.body?.pipeThrough(new TextDecoderStream()).getReader();
  let text = '';
  async function next(): Promise<StreamEvent | null> {
    for (;;) {
      const end = text.indexOf('\n\n');
      if (end >= 0) {
        // HTML Living Standard, 9.2.6: an event’s data lines, up to a blank line.
        const data = text
          .slice(0, end)
          .split('\n')
          .filter((line) => line.startsWith('data: '));
        text = text.slice(end + 2);
        if (data.length > 0)
          return StreamEvent.parse(JSON.parse(data.map((line) => line.slice(6)).join('\n')));
        continue;
      }
      const read = await reader?.read();
      if (!read || read.done) return null;
      text += read.value;
    }
  }
  return { reply, next, leave: () => reader?.cancel() };
}

describe('the stream', () => {
  it('begins with the overview', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    const { reply, next, leave } = await listen(site);
    expect(reply.headers.get('content-type')).toBe('text/event-stream');
    expect(reply.headers.get('cache-control')).toBe('no-cache');
    const event = await next();
    expect(event).toMatchObject({
      kind: 'overview',
      overview: { mayWrite: true, places: [{ id: room.id }] },
    });
    await leave();
  });

  it('tells of a change, and shows the overview after it', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const { next, leave } = await listen(site);
    await next();
    const body = { at: moment(site.now), kind: 'runs' };
    await site.call('createRemark', { id: batch.id, body });
    expect(await next()).toEqual({ kind: 'batch-changed', batchId: batch.id });
    expect((await next())?.kind).toBe('overview');
    await leave();
  });

  it('gathers changes that come close together', async () => {
    const site = await build();
    const { next, leave } = await listen(site);
    await next();
    for (const name of ['Shed', 'Barn', 'Loft']) {
      await site.call('createPlace', { body: { name, kind: 'room' } });
    }
    const event = await next();
    expect(event).toMatchObject({ kind: 'overview' });
    expect(event?.kind === 'overview' && event.overview.places.map((place) => place.name)).toEqual([
      'Shed',
      'Barn',
      'Loft',
    ]);
    await leave();
  });

  it('ends when the daemon does, and keeps nothing alive', async () => {
    const site = await build();
    const { next } = await listen(site);
    await next();
    // A change waits to be gathered while the daemon stops.
    await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
    await site.app.close();
    expect(await next()).toBeNull();
    expect(site.app.server.listening).toBe(false);
    const servers = process.getActiveResourcesInfo().filter((kind) => kind === 'TCPServerWrap');
    expect(servers).toEqual([]);
  });

  it('goes on for others when one page leaves', async () => {
    const site = await build();
    const { next, leave } = await listen(site);
    await next();
    const { port } = site.app.server.address() as AddressInfo;
    const other = await fetch(`http://127.0.0.1:${port}/api/v1/stream`);
    await other.body?.cancel();
    await site.call('createPlace', { body: { name: 'Shed', kind: 'room' } });
    expect(await next()).toMatchObject({
      kind: 'overview',
      overview: { places: [{ name: 'Shed' }] },
    });
    await leave();
    expect(site.errors).toEqual([]);
  });

  it('has no answer to a HEAD, which would never end', async () => {
    const { ask } = await build();
    expect((await ask({ method: 'HEAD', url: '/api/v1/stream' })).statusCode).toBe(404);
  });

  it('is a stream also to a client that says it wants something else', async () => {
    const site = await build();
    await site.app.listen({ host: '127.0.0.1', port: 0 });
    const { port } = site.app.server.address() as AddressInfo;
    const headers = { accept: 'text/html' };
    const reply = await fetch(`http://127.0.0.1:${port}/api/v1/stream`, { headers });
    expect(reply.headers.get('content-type')).toBe('text/event-stream');
    await reply.body?.cancel();
  });
});
