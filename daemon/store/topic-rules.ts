import type { Database } from 'better-sqlite3';
import type { TopicRuleForm } from '../contract/topic-rule.ts';
import type { TopicRuleFact } from '../rules/topic-rule-fact.ts';

interface RuleRow {
  id: string;
  place_in_order: number;
  form: string;
  recorded_at: number;
  created_at: number;
}

export function topicRuleTable(db: Database) {
  const all = db.prepare<[], RuleRow>(
    `select now.*, (select min(recorded_at) from topic_rule as any_ where any_.id = now.id) as created_at
       from topic_rule as now
      where now.superseded_at is null
      order by now.place_in_order, created_at, now.rank`,
  );
  const insert = db.prepare(
    'insert into topic_rule (id, place_in_order, form, recorded_at) values (?, ?, ?, ?)',
  );
  const supersede = db.prepare(
    'update topic_rule set superseded_at = ? where id = ? and superseded_at is null',
  );
  const ever = db.prepare<[string]>('select 1 from topic_rule where id = ? limit 1');
  return {
    /** In the order in which they are asked. */
    all: (): TopicRuleFact[] =>
      all.all().map((row) => ({
        id: row.id,
        order: row.place_in_order,
        form: JSON.parse(row.form) as TopicRuleForm,
        createdAt: row.created_at,
        changedAt: row.recorded_at,
      })),
    /** Whether an id was ever used, also by a rule that was taken away. */
    isUsed: (id: string): boolean => ever.get(id) !== undefined,
    insert: ({ id, order, form }: TopicRuleFact, at: number): void => {
      insert.run(id, order, JSON.stringify(form), at);
    },
    /** @returns whether there was one */
    supersede: (id: string, at: number): boolean => supersede.run(at, id).changes > 0,
  };
}
export type TopicRuleTable = ReturnType<typeof topicRuleTable>;
