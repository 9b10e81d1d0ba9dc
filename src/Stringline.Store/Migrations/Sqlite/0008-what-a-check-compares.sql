-- What a check compares: each derived row carries a hash over what it says, and the store the moment up to which its journal was sealed last.
-- Derived rows of earlier versions are thrown away; the next assessment of the portfolio writes them anew.
delete from steps;
delete from assessed;
alter table assessed add column steps integer not null default 0;     -- how many steps were written with it
alter table assessed add column hash blob not null default x'';       -- over everything else in the row
alter table steps add column hash blob not null default x'';          -- over everything else in the row, and over which assessment it is of
alter table store add column sealed text not null default '';      -- the moment, in microseconds since 1970-01-01 UTC, and a word to prove it
