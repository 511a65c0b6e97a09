export const sql = `
-- Readings that came while the computer’s clock was not trusted: what is known of their time is how
-- long the computer had been running. They take their place among the others once it is.
create table pending_reading (
  rank integer primary key autoincrement,
  boot text not null,
  monotonic_ms integer not null,
  own_at integer,
  sensor text not null,
  quantity integer not null,
  raw any not null check (typeof(raw) = 'real'),
  flags integer not null
) strict;
`;
