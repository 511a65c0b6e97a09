export const sql = `
-- How often a notice was told again because nobody did what it asks for, and when last.
alter table notice add column repeats integer not null default 0;
alter table notice add column repeated_at integer;

-- What is to leave the house, one row a message and channel, written with the fact that caused it.
-- The id is the key by which a receiver knows a message that comes a second time.
create table outgoing_message (
  id text primary key,
  channel text not null,
  kind text not null,
  body text not null,
  created_at integer not null,
  due_at integer not null,
  tries integer not null default 0,
  sent_at integer,
  given_up_at integer,
  last_error text
) strict;
create index outgoing_message_waiting on outgoing_message (channel, due_at)
  where sent_at is null and given_up_at is null;

-- Ticks of the lock-up list; the newest of a day and line stands.
create table lock_up_tick (
  id text primary key,
  day text not null,
  line text not null,
  done integer not null,
  at integer not null,
  by_whom text,
  recorded_at integer not null
) strict;
create index lock_up_tick_by_day on lock_up_tick (day);
`;
