-- The journal: jobs, the changes that make them up, and the papers that prove them. Hashes: docs/decisions/0003-the-journal.md.
create table store (
  only_row bigint primary key check (only_row = 1),
  jobs bigint not null                  -- how many jobs there are; their ids run from 1 to this without a gap
);
insert into store (only_row, jobs) values (1, 0);

create table jobs (
  id bigint primary key,
  key text collate "C" not null unique, -- how the outside names the job; never changes
  name text not null,                   -- the name in the last head
  sequence bigint not null,             -- of the last change
  hash bytea not null check (length(hash) = 32)   -- of the last change
);

create table changes (
  job bigint not null references jobs (id),
  sequence bigint not null,             -- from 1 without a gap
  at bigint not null,                   -- when it was recorded: microseconds since 1970-01-01 UTC
  who text not null,
  kind text not null,                   -- head, entry, proof
  learned text collate "C",             -- day on which the claimant learned it
  supersedes text,                      -- the id of the entry that this one replaces
  proofs text,                          -- a line for each attached paper: its hash, a space, its name
  payload bytea not null,               -- JSON, UTF-8
  hash bytea not null check (length(hash) = 32),
  primary key (job, sequence)
);

create table proofs (
  hash bytea primary key check (length(hash) = 32),   -- SHA-256 of the content
  kind text not null,                   -- pdf, jpeg, png
  content bytea not null
);
alter table proofs alter column content set storage external;

create function journal_is_append_only() returns trigger language plpgsql as $$
begin raise exception 'The journal is append-only: nothing is edited or erased.'; end $$;
create trigger changes_stay before update or delete or truncate on changes
for each statement execute function journal_is_append_only();
create trigger proofs_stay before update or delete or truncate on proofs
for each statement execute function journal_is_append_only();
