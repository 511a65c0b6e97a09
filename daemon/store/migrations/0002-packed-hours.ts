export const sql = `
-- Readings that are not packed yet. By slots of 15 seconds first: what comes in together lies
-- together, so that a commit touches one page and not one a sensor. A value is kept bit for bit: a column of reals would
-- keep whole numbers as integers, which know no negative zero.
create table reading_by_time (
  slot integer not null,
  sensor_key integer not null,
  quantity integer not null,
  at integer not null,
  raw any not null check (typeof(raw) = 'real'),
  flags integer not null,
  primary key (slot, sensor_key, quantity, at)
) strict, without rowid;
insert into reading_by_time (slot, sensor_key, quantity, at, raw, flags)
  select at / 15000, sensor_key, quantity, at, raw, flags from reading;
drop table reading;
alter table reading_by_time rename to reading;

-- The readings of one UTC hour in one row, with what a chart of a season needs of them. Times are
-- milliseconds within the hour. Without its packed readings once these are no longer to be kept.
create table packed_hour (
  sensor_key integer not null,
  quantity integer not null,
  hour integer not null,
  count integer not null,
  first_ms integer not null,
  last_ms integer not null,
  low_ms integer not null,
  high_ms integer not null,
  low real not null,
  high real not null,
  sum real not null,
  packed blob,
  primary key (sensor_key, quantity, hour)
) strict, without rowid;

-- What is left of the hours of a UTC day once these are no longer to be kept; milliseconds within
-- the day.
create table packed_day (
  sensor_key integer not null,
  quantity integer not null,
  day integer not null,
  count integer not null,
  first_ms integer not null,
  last_ms integer not null,
  low_ms integer not null,
  high_ms integer not null,
  low real not null,
  high real not null,
  sum real not null,
  primary key (sensor_key, quantity, day)
) strict, without rowid;

-- From which UTC hour on each level is kept; all of it where there is no row.
create table kept_from (
  level text primary key check (level in ('readings', 'hours', 'days')),
  hour integer not null
) strict, without rowid;
`;
