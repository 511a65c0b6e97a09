import { describe, expect, it } from 'vitest';
import { liveSettings } from '../../daemon/settings/live.ts';
import { Settings } from '../../daemon/settings/schema.ts';

const read = (given: object = {}) => Settings.parse(given);

describe('settings that are read anew', () => {
  it('hold at once where they can, and from the next start where not', () => {
    const live = liveSettings(read());
    const { settings } = live;
    const changes = live.take(read({ cure: { readyAt: 0.95 }, mqtt: { port: 1884 } }));
    expect(changes).toEqual([
      { name: 'mqtt.port', atOnce: false },
      { name: 'cure.readyAt', atOnce: true },
    ]);
    expect(settings.cure.readyAt).toBe(0.95);
    expect(settings.mqtt.port).toBe(1883);
    expect(live.waiting()).toEqual(['mqtt.port']);
  });

  it('wait no longer when they are what they were at the start', () => {
    const live = liveSettings(read({ site: 'shed' }));
    live.take(read({ site: 'barn' }));
    expect(live.waiting()).toEqual(['site']);
    expect(live.take(read())).toEqual([{ name: 'site', atOnce: false }]);
    expect(live.waiting()).toEqual([]);
  });

  it('are told from the last time, not from the start', () => {
    const live = liveSettings(read());
    live.take(read({ log: { level: 'debug' } }));
    expect(live.take(read({ log: { level: 'debug' } }))).toEqual([]);
    expect(live.settings.log.level).toBe('debug');
  });

  it('are the same tree as before to whoever reads them', () => {
    const plain = read({ mqtt: { external: 'mqtt://broker' } });
    const { settings } = liveSettings(plain);
    expect({ ...settings }).toEqual(plain);
    expect({ ...settings.commit }).toEqual(plain.commit);
    expect(() => {
      settings.site = 'other';
    }).toThrow(TypeError);
  });
});
