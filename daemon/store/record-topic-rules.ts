import { isDeepStrictEqual } from 'node:util';
import type { Database } from 'better-sqlite3';
import { BoardcureError } from '../contract/problem.ts';
import type { SensorStay } from '../rules/sensor-facts.ts';
import type { HeardSensor, TopicRuleFact } from '../rules/topic-rule-fact.ts';
import type { ChangeTable } from './changes.ts';
import type { SensorTable } from './sensors.ts';
import type { TopicRuleTable } from './topic-rules.ts';

interface Tables {
  rules: TopicRuleTable;
  sensors: SensorTable;
  changes: ChangeTable;
}

/** The edits of topic rules, each one transaction with its line in the list of changes. */
export function topicRuleRecorder(
  db: Database,
  { rules, sensors, changes }: Tables,
  {
    placeSensor,
    forget,
    maxSensors,
  }: {
    placeSensor: (stay: SensorStay, id: string, at: number) => void;
    /** Called when what is known of sensors in memory may be wrong. */
    forget: () => void;
    maxSensors: number;
  },
) {
  const create = db.transaction((rule: TopicRuleFact, heard: readonly HeardSensor[]) => {
    const known = rules.all().find(({ id }) => id === rule.id);
    if (known !== undefined && isDeepStrictEqual(known.form, rule.form)) return;
    if (rules.isUsed(rule.id)) {
      throw new BoardcureError(
        'BC_ID_TAKEN',
        `The id ${rule.id} already belongs to another topic rule.`,
        { pointer: '/id' },
      );
    }
    rules.insert(rule, rule.createdAt);
    changes.note(rule.createdAt, 'topic rule', rule.id, 'created');
    for (const { id, placeId, heardAt } of heard) {
      const sensor = sensors.byId(id);
      if (sensor === null && sensors.all().length >= maxSensors) continue;
      const sensorKey = sensor?.key ?? sensors.insert(id, heardAt);
      // One that hangs or has hung somewhere is moved by hand, with the time of the move.
      if (sensors.stays().some((stay) => stay.sensorKey === sensorKey)) continue;
      placeSensor({ sensorKey, placeId, fromAt: null }, id, rule.createdAt);
    }
  });
  const change = db.transaction((rule: TopicRuleFact, at: number) => {
    if (!rules.supersede(rule.id, at)) return;
    rules.insert(rule, at);
    changes.note(at, 'topic rule', rule.id, 'changed');
  });
  const remove = db.transaction((id: string, at: number) => {
    if (rules.supersede(id, at)) changes.note(at, 'topic rule', id, 'taken away');
  });
  return {
    /** Makes a rule, and has sensors that were heard hang where they are to hang from ever. */
    createTopicRule(rule: TopicRuleFact, heard: HeardSensor[]): void {
      try {
        create.immediate(rule, heard);
      } finally {
        forget();
      }
    },
    changeTopicRule: (rule: TopicRuleFact, at: number): void => change.immediate(rule, at),
    removeTopicRule: (id: string, at: number): void => remove.immediate(id, at),
  };
}
