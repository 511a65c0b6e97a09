export const sql = `
create table meta (
  key text primary key,
  value text not null
) strict;

create table place (
  id text primary key,
  name text not null,
  kind text not null check (kind in ('outdoors', 'room', 'rack', 'wall')),
  within text references place (id),
  volume_m3 real,
  facing text,
  exposure text,
  created_at integer not null
) strict;

create table sensor (
  key integer primary key,
  id text not null unique,
  name text,
  first_seen_at integer not null
) strict;

-- A corrected stay keeps what it was: the old row gets superseded_at.
create table sensor_stay (
  rank integer primary key,
  sensor_key integer not null references sensor (key),
  place_id text references place (id),
  from_at integer,
  recorded_at integer not null,
  superseded_at integer
) strict;
create index sensor_stay_by_sensor on sensor_stay (sensor_key) where superseded_at is null;

create table reading (
  sensor_key integer not null,
  quantity integer not null,
  at integer not null,
  raw real not null,
  flags integer not null,
  primary key (sensor_key, quantity, at)
) strict, without rowid;

create table refused (
  rank integer primary key,
  at integer not null,
  topic text not null,
  code text not null,
  detail text not null,
  payload_start text not null,
  payload_bytes integer not null
) strict;

create table coating_plan (
  id text primary key,
  name text not null,
  surface text not null,
  coats text not null,
  is_default integer not null,
  created_at integer not null
) strict;

create table batch (
  id text primary key,
  name text not null,
  species text not null,
  surface text not null,
  boards text not null,
  plan_id text not null references coating_plan (id),
  created_at integer not null,
  closed_at integer
) strict;

create table move (
  id text primary key,
  batch_id text not null references batch (id),
  place_id text not null references place (id),
  at integer,
  recorded_at integer not null
) strict;
create index move_by_batch on move (batch_id);

create table coat (
  id text primary key,
  batch_id text not null references batch (id),
  coat integer not null,
  begun_at integer,
  finished_at integer not null,
  mixture text not null,
  faces text not null,
  used_l real,
  colour text,
  tin text,
  recorded_at integer not null,
  removed_at integer
) strict;
create unique index coat_once on coat (batch_id, coat) where removed_at is null;

create table touch_test (
  id text primary key,
  batch_id text not null references batch (id),
  coat_id text not null references coat (id),
  at integer not null,
  gate text not null,
  passed integer not null,
  felt_on text not null,
  recorded_at integer not null
) strict;
create index touch_test_by_batch on touch_test (batch_id);

create table remark (
  id text primary key,
  batch_id text not null references batch (id),
  at integer not null,
  kind text not null,
  text text,
  recorded_at integer not null
) strict;
create index remark_by_batch on remark (batch_id);

create table hand_reading (
  id text primary key,
  place_id text references place (id),
  batch_id text references batch (id),
  quantity text not null,
  figures text not null,
  at integer not null,
  recorded_at integer not null,
  check ((place_id is null) <> (batch_id is null))
) strict;

create table notice (
  id text primary key,
  kind text not null,
  subject text not null,
  text text not null,
  raised_at integer not null,
  seen_at integer,
  cleared_at integer
) strict;
create unique index notice_once on notice (kind, subject) where cleared_at is null;

-- A cache: what the cure model makes of the readings of one UTC hour at a place.
create table hour_sum (
  place_id text not null,
  model text not null,
  hour integer not null,
  low real not null,
  high real not null,
  capped real not null,
  covered real not null,
  primary key (place_id, model, hour)
) strict, without rowid;

-- Which hours of a place were reckoned; an hour within it that has no sum gathered nothing.
create table hour_range (
  place_id text not null,
  model text not null,
  from_hour integer not null,
  to_hour integer not null,
  primary key (place_id, model)
) strict, without rowid;

-- Stretches whose hours no longer agree with the readings; written with the fact that caused them.
-- A rank is never used twice: whoever works a span in knows it by its rank.
create table dirty_span (
  rank integer primary key autoincrement,
  place_id text not null,
  from_at integer not null,
  to_at integer not null
) strict;

-- Every change of the site in order, so that others can follow it.
create table change (
  seq integer primary key autoincrement,
  at integer not null,
  subject text not null,
  subject_id text not null,
  what text not null
) strict;
`;
