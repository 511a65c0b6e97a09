export const sql = `
-- What a sentence tells besides its text, as JSON of its code and values, so that it can be said in
-- the language of whoever reads it. Older rows keep their text alone.
alter table notice add column told text;
alter table sensor_fault add column told text;
alter table remark add column told text;
`;
