import { bench, describe } from 'vitest';
import { discovery } from '../../daemon/ingest/discovery.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import { topicRules } from '../../daemon/ingest/topic-rules.ts';
import { ruleForm, type TopicRuleFact } from '../../daemon/rules/topic-rule-fact.ts';
import { draft } from '../payload/rule-of.ts';

/** From the broker's hand-over to the group that commits; nothing is written. */
const messages = 1000;
const nodes = 50;
const now = Date.UTC(2026, 4, 4, 8);

const rule = (id: string, given: Parameters<typeof draft>[0]): TopicRuleFact => ({
  ...{ id, order: 0, createdAt: now, changedAt: now },
  form: ruleForm(draft(given)),
});
const text = {
  payload: 'text' as const,
  values: [{ quantity: 'air-temperature' as const }],
};
const several = {
  values: [
    { quantity: 'air-temperature' as const, pointer: '/t' },
    { quantity: 'relative-humidity' as const, pointer: '/h' },
    { quantity: 'battery' as const, pointer: '/b', unit: 'fraction' },
  ],
};

function intakeWith(facts: TopicRuleFact[] | null) {
  let taken = 0;
  const rules = topicRules({
    ...{ site: 'shed', maxBytes: 65_536, listenTo: () => {} },
    unusable: (id, faults) => {
      throw new Error(`${id}: ${JSON.stringify(faults)}`);
    },
  });
  rules.replace(facts ?? []);
  const found = discovery({
    ...{ site: 'shed', rules, maxTopics: 200, maxBytes: 2048, now: () => now, listener: null },
  });
  const intake = createIntake({
    ...{ site: 'shed', maxPayloadBytes: 65_536, now: () => now, clockTrusted: () => true },
    queue: {
      add: (readings) => {
        taken += readings.length;
      },
    },
    ...(facts === null ? {} : { otherTopics: { heard: found.note, decode: rules.decode } }),
  });
  return { intake, taken: () => taken };
}

function run(name: string, facts: TopicRuleFact[] | null, topic: string, payload: string): void {
  const { intake, taken } = intakeWith(facts);
  const sent = Array.from({ length: nodes }, (_, node) => ({
    topic: topic.replace('NODE', `n${node}`),
    payload: Buffer.from(payload),
    retained: false,
    backlog: false,
  }));
  const nobody = () => {};
  bench(name, () => {
    const before = taken();
    for (let i = 0; i < messages; i++) {
      const message = sent[i % nodes];
      if (message) intake.take(message, nobody);
    }
    const isUnknown = topic.startsWith('elsewhere');
    if (taken() - before === 0 && !isUnknown) throw new Error('nothing was taken');
  });
}

const own = 'boardcure/shed/sensor/NODE/air-temperature';
const hundred = [
  ...Array.from({ length: 99 }, (_, i) =>
    rule(`r${i}`, { ...text, pattern: `other${i}/{sensor}/t` }),
  ),
  rule('last', { ...text, pattern: 'farm/{sensor}/temp' }),
];

describe(`${messages} messages through the intake, one number each`, () => {
  run('default topics, without rules', null, own, '21.5');
  run('default topics, with a hundred rules', hundred, own, '21.5');
  run(
    'by a rule',
    [rule('one', { ...text, pattern: 'farm/{sensor}/temp' })],
    'farm/NODE/temp',
    '21.5',
  );
  run('by the last of a hundred rules', hundred, 'farm/NODE/temp', '21.5');
  run(
    'by a rule, 70,7 °F',
    [rule('f', { ...text, pattern: 'farm/{sensor}/temp' })],
    'farm/NODE/temp',
    '70,7 °F',
  );
  run('known to nobody', hundred, 'elsewhere/NODE/temp', '21.5');
});

describe(`${messages} messages through the intake, JSON`, () => {
  run('default topics, value and time', null, own, '{"value":21.5,"time":1777881600}');
  run(
    'by a rule, value and time',
    [rule('v', { time: { from: '/ts', format: 'epoch-s' } })],
    'farm/NODE/data',
    '{"temp":21.5,"ts":1777881600}',
  );
  run(
    'by a rule, three values',
    [rule('s', several)],
    'farm/NODE/data',
    '{"t":21.5,"h":55,"b":0.9}',
  );
});
