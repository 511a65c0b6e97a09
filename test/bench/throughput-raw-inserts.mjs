// Nothing but the database: inserts of the same rows, in groups, with the same durability.
// Arguments: the database file, readings a commit, readings in all. Says how long it took and
// how much processor time, ms.
import BetterSqlite3 from 'better-sqlite3';

const [file, size, total] = process.argv.slice(2);
const db = new BetterSqlite3(file);
db.pragma('journal_mode = WAL');
db.pragma('synchronous = FULL');
db.exec(`create table reading (at integer, sensor_key integer, quantity integer, raw real,
  flags integer, primary key (at, sensor_key, quantity)) without rowid`);
const insert = db.prepare('insert or ignore into reading values (?, ?, 1, ?, 0)');
const commit = db.transaction((from, to) => {
  for (let i = from; i < to; i++) insert.run(1_700_000_000_000 + i * 1000, i % 20, 18.5);
});
const began = performance.now();
const idle = process.cpuUsage();
for (let i = 0; i < Number(total); i += Number(size)) {
  commit(i, Math.min(Number(total), i + Number(size)));
}
const { user, system } = process.cpuUsage(idle);
process.stdout.write(`${performance.now() - began} ${(user + system) / 1000}\n`);
