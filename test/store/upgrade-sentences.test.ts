import BetterSqlite3 from 'better-sqlite3';
import { expect, it } from 'vitest';
import { migrate, migrations } from '../../daemon/store/migrate.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { day1 } from './site-of-facts.ts';

const noBackup = () => {};

it('sentences that stood in the column of their text are whole after an upgrade, and other texts as they were', () => {
  const db = new BetterSqlite3(':memory:');
  migrate(db, noBackup, migrations.slice(0, 12));
  const within = sentence('payload-empty', {});
  const said = sentence('sensor-too-many', { sensor: 'a "b" \\ {"text":"å"}', sensors: 3 });
  const nested = { code: 'outer', values: { inner: within, figure: 1.5 }, text: 'Outer. Empty.' };
  const written = ({ code, values, text }: typeof said | typeof nested) =>
    JSON.stringify({ code, values, text });
  const plain = 'It was empty.';
  const odd = '{"code":"no sentence';
  const refused = db.prepare(
    "insert into refused (at, topic, code, detail, payload_start, payload_bytes) values (?, 't', 'c', ?, '', 0)",
  );
  for (const detail of [odd, plain, written(nested), written(said)]) refused.run(day1, detail);
  const outgoing = db.prepare(
    `insert into outgoing_message (id, channel, kind, body, created_at, due_at, last_error)
     values (?, ?, 'notices', '{}', ?, 0, ?)`,
  );
  outgoing.run('1', 'webhook', 2, written(said));
  outgoing.run('2', 'webhook', 1, written(nested));
  outgoing.run('3', 'mail', 1, plain);
  outgoing.run('4', 'mqtt', 1, null);

  migrate(db, noBackup);
  const read = storeReader(db);
  expect(read.refused().map(({ detail, detailSaid }) => ({ detail, detailSaid }))).toEqual([
    { detail: said.text, detailSaid: said },
    { detail: nested.text, detailSaid: nested },
    { detail: plain, detailSaid: undefined },
    { detail: odd, detailSaid: undefined },
  ]);
  const tallies = read
    .channelTallies()
    .map((one) => [one.channel, one.lastError, one.lastErrorSaid]);
  expect(tallies).toEqual([
    ['mail', plain, null],
    ['mqtt', null, null],
    ['webhook', said.text, said],
  ]);
});
