// Packs all closed hours of a database, a small slice a transaction.
// Arguments: the address of the folder with the built program, the database file.
import { argv, stdout } from 'node:process';

const [build, file] = argv.slice(2);
const { openForWriting } = await import(new URL('daemon/store/open.js', build).href);
const { storeWriter } = await import(new URL('daemon/store/store.js', build).href);

const writer = storeWriter(openForWriting(file), 1);
stdout.write('begun\n');
while (writer.packClosedHours(Date.now(), 10).more);
