-- The desk asks for steps of some jobs by dollars: indexes in that order end as soon as the page is full. And a number that changes with
-- every writing of steps, so that sums over all of them need be made only once for each.
drop index steps_by_customer;
drop index steps_by_county;
drop index steps_by_person;
drop index steps_by_remedy;
-- The same order of words on every server, as on SQLite.
alter table steps alter column customer type text collate "C";
alter table steps alter column county type text collate "C";
alter table steps alter column person type text collate "C";
alter table steps alter column remedy type text collate "C";
create index steps_by_customer on steps (customer, watch, weight desc, act_by, lead);
create index steps_by_county on steps (county, watch, weight desc, act_by, lead);
create index steps_by_person on steps (person, watch, weight desc, act_by, lead);
create index steps_by_remedy on steps (remedy, watch, weight desc, act_by, lead);
create index watches_by_county on steps (county, act_by) where watch = 1;

create table steps_written (
  only_row bigint not null primary key check (only_row = 1),
  times bigint not null
);
insert into steps_written (only_row, times) values (1, 0);
