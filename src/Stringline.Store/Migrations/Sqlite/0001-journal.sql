-- The journal: jobs, the changes that make them up, and the papers that prove them. Hashes: docs/decisions/0003-the-journal.md.
create table store (
  only_row integer primary key check (only_row = 1),
  jobs integer not null                 -- how many jobs there are; their ids run from 1 to this without a gap
) strict;
insert into store (only_row, jobs) values (1, 0);

create table jobs (
  id integer primary key,
  key text not null unique,             -- how the outside names the job; never changes
  name text not null,                   -- the name in the last head
  sequence integer not null,            -- of the last change
  hash blob not null check (length(hash) = 32)    -- of the last change
) strict;

create table changes (
  job integer not null references jobs (id),
  sequence integer not null,            -- from 1 without a gap
  at integer not null,                  -- when it was recorded: microseconds since 1970-01-01 UTC
  who text not null,
  kind text not null,                   -- head, entry, proof
  learned text,                         -- day on which the claimant learned it
  supersedes text,                      -- the id of the entry that this one replaces
  proofs text,                          -- a line for each attached paper: its hash, a space, its name
  payload blob not null,                -- JSON, UTF-8
  hash blob not null check (length(hash) = 32),
  primary key (job, sequence)
) strict, without rowid;

create table proofs (
  hash blob primary key check (length(hash) = 32),    -- SHA-256 of the content
  kind text not null,                   -- pdf, jpeg, png
  content blob not null
) strict;

create trigger changes_are_not_edited before update on changes
begin select raise(abort, 'The journal is append-only: no change is edited.'); end;
create trigger changes_are_not_erased before delete on changes
begin select raise(abort, 'The journal is append-only: no change is erased.'); end;
create trigger proofs_are_not_edited before update on proofs
begin select raise(abort, 'The journal is append-only: no proof is edited.'); end;
create trigger proofs_are_not_erased before delete on proofs
begin select raise(abort, 'The journal is append-only: no proof is erased.'); end;
