export const sql = `
alter table place add column capacity_m real;
alter table place add column capacity_boards integer;

-- What is known of the timber besides its size, as JSON; null where nobody was asked.
alter table batch add column timber text;

-- Boards that went their own way: a new batch that shares all that happened up to then.
create table batch_split (
  id text primary key,
  batch_id text not null references batch (id),
  child_id text not null unique references batch (id),
  boards integer not null,
  at integer not null,
  recorded_at integer not null
) strict;

-- A batch that was put to another one, and from then on shares what happens to that.
create table batch_merge (
  id text primary key,
  batch_id text not null references batch (id),
  merged_id text not null unique references batch (id),
  at integer not null,
  recorded_at integer not null
) strict;

-- A plan is never rewritten: what changes is a new version in its family, the first one's id.
alter table coating_plan add column family_id text;
alter table coating_plan add column version integer not null default 1;
alter table coating_plan add column use text;
update coating_plan set family_id = id;
update coating_plan set use = 'usual' where is_default = 1;
create unique index plan_version on coating_plan (family_id, version);

create table tin (
  id text primary key,
  name text not null,
  kind text not null,
  colour text,
  volume_l real,
  driers text not null,
  opened_at integer,
  emptied_at integer,
  created_at integer not null
) strict;

-- Each coat keeps the version of the plan it was put on by, whatever its batch goes by later.
alter table coat add column plan_id text references coating_plan (id);
alter table coat add column tin_id text references tin (id);
update coat set plan_id = (select plan_id from batch where batch.id = coat.batch_id);

-- A coat on its way: begun, its steps ticked, finished (then it is a coat) or given up.
create table coating (
  id text primary key,
  batch_id text not null references batch (id),
  coat integer not null,
  begun_at integer not null,
  tin_id text references tin (id),
  coat_id text references coat (id),
  given_up_at integer,
  recorded_at integer not null
) strict;
create table coating_step (
  coating_id text not null references coating (id),
  step text not null,
  at integer not null,
  primary key (coating_id, step)
) strict;

alter table touch_test add column learned_by text;

-- 1 where the house itself saw it, as a night of dew.
alter table remark add column automatic integer not null default 0;

-- Lines ticked when boards went up on a wall.
create table mounting_tick (
  move_id text not null references move (id),
  line text not null,
  at integer not null,
  primary key (move_id, line)
) strict;
`;
