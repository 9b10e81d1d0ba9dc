-- Full-text search over jobs, and what the last assessment of each job found. Both are derived from the journal and can be made anew.
-- The words come folded (lower case, no accents, letters and digits), so that no extension is needed and both databases answer the same.
create table search_texts (
  job bigint primary key references jobs (id),
  texts text not null,                  -- a line for each text: its field, a tab, the text
  words tsvector not null
);
create index search_by_word on search_texts using gin (words);

create table assessed (
  job bigint primary key references jobs (id),
  sequence bigint not null,             -- of the job's last change that was looked at
  rules text not null,                  -- version of the rules
  as_of text collate "C" not null,      -- the day on which the question was asked
  act_by text collate "C",              -- the nearest day to act; null where nothing is to be done
  at_stake bigint,                      -- cents
  standing text not null,
  what text not null,                   -- id of the finding that sets the day
  findings bytea not null               -- JSON, UTF-8
);
create index assessed_by_act_by on assessed (act_by, job) where act_by is not null;
