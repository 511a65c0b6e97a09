// Makes days, or changes them, a small slice a transaction, and is killed (SIGKILL) at one moment.
// Arguments: the address of the folder with the built program, the database file, and as JSON what to do:
// { work, beforeAt, late, strike: { on, nth } }.
import { argv, stdout } from 'node:process';

const [build, file, told] = argv.slice(2);
const { openForWriting } = await import(new URL('daemon/store/open.js', build).href);
const { storeWriter } = await import(new URL('daemon/store/store.js', build).href);
const { work, beforeAt, late, strike } = JSON.parse(told);

let left = strike?.nth ?? 0;
function struck() {
  if (--left !== 0) return 0;
  process.kill(process.pid, 'SIGKILL');
  for (;;);
}

const db = openForWriting(file);
if (strike && strike.on !== 'slice') {
  // In the midst of a transaction, right after the row was written.
  db.function('struck', struck);
  db.exec(`create temp trigger strike after ${strike.on} begin select struck(); end`);
}
const writer = storeWriter(db, 1);
stdout.write('begun\n');

function untilDone(slice) {
  while (slice().more) if (strike?.on === 'slice') struck();
}

if (work === 'late') writer.commitReadings({ readings: late, refused: [], arrivedAt: beforeAt });
if (work === 'let go') {
  untilDone(() => writer.letGo('readings', beforeAt));
  untilDone(() => writer.letGo('hours', beforeAt));
} else untilDone(() => writer.packClosedHours(beforeAt, 10));
