-- Full-text search over jobs, and what the last assessment of each job found. Both are derived from the journal and can be made anew.
create table search_texts (
  job integer primary key references jobs (id),
  texts text not null                   -- a line for each text: its field, a tab, the text
) strict;

-- Holds folded words only (lower case, no accents, letters and digits), so that both databases give the same answers.
create virtual table search using fts5 (words, content = '', contentless_delete = 1, detail = 'none', tokenize = "unicode61 remove_diacritics 2");

create table assessed (
  job integer primary key references jobs (id),
  sequence integer not null,            -- of the job's last change that was looked at
  rules text not null,                  -- version of the rules
  as_of text not null,                  -- the day on which the question was asked
  act_by text,                          -- the nearest day to act; null where nothing is to be done
  at_stake integer,                     -- cents
  standing text not null,
  what text not null,                   -- id of the finding that sets the day
  findings blob not null                -- JSON, UTF-8
) strict;
create index assessed_by_act_by on assessed (act_by, job) where act_by is not null;
