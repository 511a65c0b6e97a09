export const sql = `
-- Pictures from the phone: kept whole in the database, so that a backup holds them too.
create table photo (
  id text primary key,
  batch_id text not null references batch (id),
  at integer not null,
  text text,
  type text not null,
  picture blob not null,
  recorded_at integer not null,
  removed_at integer
) strict;
create index photo_of_batch on photo (batch_id, at);
`;
