// The least that takes readings from another broker into the same table: a bare session that commits
// what came in one turn, at most so many at once, and acknowledges it after that.
// Arguments: the broker's port, the database file, readings a commit at most.
import { connect } from 'node:net';
import BetterSqlite3 from 'better-sqlite3';
import { generate, parser } from 'mqtt-packet';

const [port, file, most] = process.argv.slice(2);
const db = new BetterSqlite3(file);
db.pragma('journal_mode = WAL');
db.pragma('synchronous = FULL');
db.exec(`create table sensor (key integer primary key, id text unique not null);
  create table reading (at integer, sensor_key integer, quantity integer, raw real, flags integer,
    primary key (at, sensor_key, quantity)) without rowid`);
const keyOf = db.prepare('select key from sensor where id = ?').pluck();
const addSensor = db.prepare('insert into sensor (id) values (?)');
const insert = db.prepare('insert or ignore into reading values (?, ?, 1, ?, 0)');
const keys = new Map();
const commit = db.transaction((messages) => {
  for (const { topic, payload } of messages) {
    const id = topic.split('/')[3];
    if (!keys.has(id)) keys.set(id, keyOf.get(id) ?? Number(addSensor.run(id).lastInsertRowid));
    const { value, time } = JSON.parse(payload.toString());
    insert.run(time, keys.get(id), value);
  }
});

const socket = connect(Number(port), '127.0.0.1');
socket.setNoDelay(true);
const packets = parser({ protocolVersion: 4 });
const say = (packet) => socket.write(generate(packet));
const waiting = [];
let planned = false;
let stored = 0;

function take() {
  planned = false;
  const group = waiting.splice(0, Number(most));
  commit(group);
  socket.write(Buffer.concat(group.map(({ messageId }) => generate({ cmd: 'puback', messageId }))));
  stored += group.length;
  process.stdout.write(`${stored}\n`);
  if (waiting.length > 0) plan();
}
function plan() {
  if (planned) return;
  planned = true;
  setImmediate(take);
}

socket.on('data', (bytes) => packets.parse(bytes));
packets.on('packet', (packet) => {
  if (packet.cmd === 'connack') {
    const subscriptions = [{ topic: 'boardcure/+/sensor/#', qos: 1 }];
    say({ cmd: 'subscribe', messageId: 1, subscriptions });
  } else if (packet.cmd === 'suback') {
    process.stdout.write('0\n');
  } else if (packet.cmd === 'publish') {
    waiting.push(packet);
    plan();
  }
});
const names = { protocolId: 'MQTT', protocolVersion: 4, clientId: 'minimal' };
say({ cmd: 'connect', ...names, clean: true, keepalive: 0 });
