-- What is left of a right whose planned day is past, and what is owed beside what the step can save. Every job is assessed anew by the new rules,
-- so that old rows have them soon.
alter table steps add column left_of_it text;
alter table steps add column outlook text;
alter table steps add column stakes text;
alter table steps add column owed integer;
