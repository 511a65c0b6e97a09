export const sql = `
-- What the site is called on its pages; the newest holds, null for the name of its topics.
create table site_name (
  rank integer primary key,
  name text,
  recorded_at integer not null
) strict;
`;
