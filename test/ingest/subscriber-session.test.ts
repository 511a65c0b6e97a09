import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { needs } from '../house/needs.ts';
import { cutLine } from './cut-line.ts';
import { connected, listening, ownTimed, publishAll, soon } from './listening.ts';
import { type Mosquitto, startMosquitto } from './mosquitto.ts';

const statusTopic = 'boardcure/shed/status';

let site: ReturnType<typeof listening>;
beforeEach(() => {
  site = listening();
});
afterEach(() => site.close());

needs('mosquitto')('the daemon says at mosquitto how it is', () => {
  let mosquitto: Mosquitto;
  beforeEach(async () => {
    mosquitto = await startMosquitto();
    site.onClose(() => mosquitto.remove());
  });

  async function statesHeard(): Promise<string[]> {
    const states: string[] = [];
    const client = await site.publisher(mosquitto.port);
    client.on('message', (_, payload) => states.push(JSON.parse(payload.toString()).status));
    await client.subscribeAsync(statusTopic, { qos: 1 });
    return states;
  }

  it('offline by the will when the line is cut, and online again when it is mended', async () => {
    const line = await cutLine(mosquitto.port);
    site.onClose(() => line.close());
    const states = await statesHeard();
    const subscriber = site.subscriber(line.port);
    subscriber.publish(statusTopic, '{"status":"online"}', { retain: true });
    await vi.waitFor(() => expect(states).toEqual(['online']), soon);
    line.cut();
    await vi.waitFor(() => expect(states).toEqual(['online', 'offline']), soon);
    line.mend();
    await vi.waitFor(() => expect(states).toEqual(['online', 'offline', 'online']), soon);
  });

  it('without a word of the will when we close in order', async () => {
    const states = await statesHeard();
    const subscriber = site.subscriber(mosquitto.port);
    subscriber.publish(statusTopic, '{"status":"closing"}', { retain: true });
    await vi.waitFor(() => expect(states).toEqual(['closing']), soon);
    await subscriber.close();
    const later = await statesHeard();
    await vi.waitFor(() => expect(later).toEqual(['closing']), soon);
    expect(states).toEqual(['closing']);
  });

  it('the newest state of each topic is given again to a broker that forgot it', async () => {
    const forgetful = await startMosquitto({ persistence: false });
    site.onClose(() => forgetful.remove());
    const subscriber = site.subscriber(forgetful.port);
    subscriber.publish('boardcure/shed/place/a', 'old', { retain: true });
    subscriber.publish('boardcure/shed/place/a', 'new', { retain: true });
    subscriber.publish('boardcure/shed/place/b', 'gone', { retain: true });
    subscriber.publish('boardcure/shed/place/b', '', { retain: true });
    await connected(subscriber);
    await forgetful.stop();
    await vi.waitFor(() => expect(subscriber.connected()).toBe(false), soon);
    await forgetful.start();
    await connected(subscriber);
    const heard: string[] = [];
    const client = await site.publisher(forgetful.port);
    client.on('message', (at, payload) => heard.push(`${at} ${payload}`));
    await client.subscribeAsync('boardcure/shed/place/#', { qos: 1 });
    await vi.waitFor(() => expect(heard).toEqual(['boardcure/shed/place/a new']), soon);
  });

  it('a thousand states at once do not overrun what mosquitto takes', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    for (let i = 0; i < 1000; i++) {
      subscriber.publish(`boardcure/shed/place/${i}`, 'x', { retain: true });
    }
    await connected(subscriber);
    let heard = 0;
    const client = await site.publisher(mosquitto.port);
    client.on('message', () => heard++);
    await client.subscribeAsync('boardcure/shed/place/#', { qos: 1 });
    await vi.waitFor(() => expect(heard).toBe(1000), soon);
    expect(subscriber.connected()).toBe(true);
  });

  it('and what may be behind it when its session is lost again and again', async () => {
    const said: string[] = [];
    const first = site.subscriber(mosquitto.port, {
      log: { info() {}, warn: (_, text) => said.push(text) },
    });
    await connected(first);
    site.subscriber(mosquitto.port);
    await vi.waitFor(
      () => expect(said.join()).toContain('no other client uses our client id'),
      soon,
    );
  });
});

needs('mosquitto')('a mosquitto that wants a password', () => {
  const user = { name: 'shed daemon', password: 'p@ss:w/rd%' };
  let guarded: Mosquitto;
  beforeEach(async () => {
    guarded = await startMosquitto({ user });
    site.onClose(() => guarded.remove());
  });
  const login = (name: string, password: string) =>
    `${encodeURIComponent(name)}:${encodeURIComponent(password)}@`;

  it('gets it from the address', async () => {
    const subscriber = site.subscriber(guarded.port, { login: login(user.name, user.password) });
    await connected(subscriber);
    const client = await site.publisher(guarded.port, {
      username: user.name,
      password: user.password,
    });
    await publishAll(client, [ownTimed(1)]);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(1), soon);
  });

  it('and a wrong one is said, without telling it', async () => {
    const said: string[] = [];
    const subscriber = site.subscriber(guarded.port, {
      login: login(user.name, 'secret-guess'),
      log: { info() {}, warn: (facts, text) => said.push(JSON.stringify(facts) + text) },
    });
    await vi.waitFor(() => expect(said.join()).toContain('check name and password'), soon);
    expect(subscriber.connected()).toBe(false);
    expect(said.join()).not.toContain('secret-guess');
  });
});
