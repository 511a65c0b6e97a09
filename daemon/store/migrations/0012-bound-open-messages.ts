export const sql = `
-- A number holds for the file it was written to and not for a copy of it, nor for ever. Those of before
-- are taken for the file's own, and for opened now.
alter table open_message add column file text;
alter table open_message add column opened_at integer not null default 0;
update open_message set opened_at = cast(unixepoch('subsec') * 1000 as integer);
`;
