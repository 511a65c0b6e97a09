export const sql = `
-- Each row is a calibration as it was recorded. One that is corrected or withdrawn keeps what it was:
-- the old row gets superseded_at, and a correction is a new row under the same id.
create table calibration (
  rank integer primary key,
  id text not null,
  sensor_key integer not null references sensor (key),
  quantity integer not null,
  from_at integer,
  how text not null,
  note text,
  recorded_at integer not null,
  superseded_at integer
) strict;
create unique index calibration_once on calibration (id) where superseded_at is null;

-- Faults found in what sensors sent, from when and until when.
create table sensor_fault (
  id text primary key,
  sensor_key integer not null references sensor (key),
  quantity integer,
  kind text not null,
  from_at integer not null,
  until_at integer,
  says text not null,
  recorded_at integer not null
) strict;
create index sensor_fault_open on sensor_fault (sensor_key) where until_at is null;

alter table sensor add column height text;
alter table sensor add column species text;
`;
