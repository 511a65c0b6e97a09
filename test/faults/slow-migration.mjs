// Brings a database two versions further, slowly: each step writes many rows.
// Arguments: the address of the folder with the built program, the database file.
import { argv, stdout } from 'node:process';

const [build, file] = argv.slice(2);
const { openForWriting } = await import(new URL('daemon/store/open.js', build).href);
const { migrations } = await import(new URL('daemon/store/migrate.js', build).href);

const slow = (name) => ({
  name,
  sql: `create table ${name} (n integer primary key, text text);
    insert into ${name} with recursive c(n) as
      (select 1 union all select n + 1 from c where n < 300000)
      select n, printf('%064d', n) from c;`,
});
stdout.write('begun\n');
openForWriting(file, [...migrations, slow('slow_one'), slow('slow_two')]).close();
