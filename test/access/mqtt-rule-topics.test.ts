import { expect, it } from 'vitest';
import { topicRules } from '../../daemon/ingest/topic-rules.ts';
import { openAccess } from './open-access.ts';

const at = Date.UTC(2026, 4, 20, 12);

/** A rule that reads the sensor’s id from the payload: the topic alone says nothing of it. */
function withRule() {
  const rules = topicRules({
    site: 'shed',
    maxBytes: 65_536,
    listenTo: () => {},
    unusable: (_id, faults) => {
      throw new Error(JSON.stringify(faults));
    },
  });
  rules.replace([
    {
      id: '019a0000-0000-7000-8000-000000000001',
      order: 1,
      createdAt: at,
      changedAt: at,
      form: {
        pattern: 'farm/+/data',
        sensor: '{/id}',
        payload: 'json',
        values: [
          {
            quantity: 'air-temperature',
            pointer: '/t',
            name: '',
            unit: null,
            scale: 1,
            sensor: null,
          },
        ],
        time: null,
      },
    },
  ]);
  return openAccess({ decode: rules.decode });
}

const reading = (id: string) => Buffer.from(JSON.stringify({ id, t: 20 }));

it('a node is kept to its own sensors where a topic rule reads the id from the payload', async () => {
  const { mqttAccess } = withRule();
  const { name, password } = await mqttAccess.make('farm-3', 'node', ['attic']);
  const admission = await mqttAccess.admit({
    client: 'c',
    username: name,
    password: Buffer.from(password),
    address: '192.168.1.50',
  });
  if (admission.kind !== 'in') throw new Error('It should have been let in.');
  const { guest } = admission;
  expect(guest.publishes('farm/3/data', reading('cellar'))).toBe('take');
  await mqttAccess.setMode('closed', [], { silence: [], silenceListeners: false });
  expect(guest.publishes('farm/3/data', reading('attic'))).toBe('take');
  expect(guest.publishes('farm/3/data', reading('cellar'))).toBe('end');
  expect(guest.publishes('farm/3/other', reading('attic'))).toBe('let-go');
  // What cannot be read carries nobody’s reading; the intake refuses it and says why.
  expect(guest.publishes('farm/3/data', Buffer.from('{'))).toBe('take');
});

it('a sensor of a topic rule is seen on the way to a closed broker', async () => {
  const { mqttAccess, time } = withRule();
  const admission = await mqttAccess.admit({
    client: 'c',
    username: undefined,
    password: undefined,
    address: '192.168.1.50',
  });
  if (admission.kind !== 'in') throw new Error('It should have been let in.');
  await mqttAccess.make('farm-3', 'node', ['attic']);
  admission.guest.publishes('farm/3/data', reading('attic'));
  const heard = [{ id: 'attic', name: null, latestAt: time.ms }];
  expect(mqttAccess.state(heard).sensors).toMatchObject([{ pairing: 'waiting' }]);
});
