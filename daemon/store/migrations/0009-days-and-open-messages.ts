export const sql = `
-- A day’s extremes and sums are written once it is over, and no longer only when its hours are let go:
-- a chart of years then reads days. Stretches of the day without readings, longer than an hour, are pairs
-- of 32-bit numbers, the last ms before and the first after, least significant byte first.
alter table packed_day add column gaps blob;

-- Days before this one are made and kept right; those after are made from their hours in the background.
create table packed_days_made (
  only_one integer primary key check (only_one = 1),
  until_day integer not null
) strict;

-- QoS 2 messages that were taken and that their senders have not released: one that is sent again after
-- a restart is known by these. Written with its readings, where these have no time of their own.
create table open_message (
  client text not null,
  message_id integer not null,
  content text not null,
  primary key (client, message_id)
) strict;
`;
