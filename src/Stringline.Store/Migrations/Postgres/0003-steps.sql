-- What is to be done on each job, step by step, so that the desk reads its page from indexes alone; and by whom and where jobs are looked
-- for. Derived: what earlier versions kept is thrown away, and the next assessment of the portfolio writes it anew.
delete from assessed;
alter table assessed add column customer text;  -- who hired the claimant
alter table assessed add column county text;
alter table assessed add column person text;    -- who signs for the claimant
create index assessed_by_customer on assessed (customer, job);

create table steps (
  job bigint not null references jobs (id),
  ordinal bigint not null,               -- from 0, most pressing first
  watch bigint not null,                 -- 1: only keeps watch, nothing is lost by the day itself
  lead bigint not null,                  -- 1: the first step of its job that is no watch; its dollars count once in totals
  act_by text collate "C" not null,
  weight bigint not null,                -- cents at stake; 0 where no amount is known
  priced bigint not null,                -- 1: an amount is known
  what text not null,                   -- id of the finding whose day it is
  act text not null,                    -- what to do, as an order
  remedy text not null,
  standing text not null,
  reading text,                         -- the reading that sets the day
  section text,                         -- the section it rests on
  customer text not null,
  county text not null,
  person text not null,
  primary key (job, ordinal)
);
create index steps_by_day on steps (watch, act_by, weight, lead);
create index steps_by_weight on steps (watch, weight desc, act_by);
create index steps_by_customer on steps (customer, watch, act_by);
create index steps_by_county on steps (county, watch, act_by, job);
create index steps_by_person on steps (person, watch, act_by);
create index steps_by_remedy on steps (remedy, watch, act_by);
