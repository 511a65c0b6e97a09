export const sql = `
-- The sentences of these stood in the column of their English text, as JSON of code, values and text.
alter table refused add column told text;
update refused
   set told = json_object('code', detail ->> 'code', 'values', json(detail -> 'values')),
       detail = detail ->> 'text'
 where detail like '{"code":"%' and json_valid(detail);

alter table outgoing_message add column last_error_told text;
update outgoing_message
   set last_error_told = json_object('code', last_error ->> 'code', 'values', json(last_error -> 'values')),
       last_error = last_error ->> 'text'
 where last_error like '{"code":"%' and json_valid(last_error);
`;
