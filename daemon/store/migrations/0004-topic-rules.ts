export const sql = `
-- Rules by which other topics become readings. A change keeps what was: the old row gets
-- superseded_at, and a rule that was taken away has no row without it.
create table topic_rule (
  rank integer primary key autoincrement,
  id text not null,
  place_in_order integer not null,
  form text not null,
  recorded_at integer not null,
  superseded_at integer
) strict;
create unique index topic_rule_now on topic_rule (id) where superseded_at is null;
`;
