-- What an office sets for all its desks; and what is owed on each job and how it is held, so that the pages about customers read sums from
-- an index. The sums are derived: what earlier versions kept is thrown away, and the next assessment of the portfolio writes it anew.
create table settings (
  id integer primary key check (id = 1),       -- one row
  document text not null                  -- JSON; the store keeps it as it is
) strict;
delete from steps;
delete from assessed;
alter table assessed add column owed integer not null default 0;   -- cents
alter table assessed add column held integer not null default 0;   -- cents of it that a recorded or given right holds
alter table assessed add column may integer not null default 0;    -- cents of it that can still be secured by a right that is open
drop index assessed_by_customer;
create index assessed_by_customer on assessed (customer, job, owed, held, may, act_by);
