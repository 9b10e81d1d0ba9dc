-- Steps are asked for by day, and by dollars within a day: indexes in that order end as soon as the page is full.
drop index steps_by_day;
drop index steps_by_weight;
drop index steps_by_customer;
drop index steps_by_county;
drop index steps_by_person;
drop index steps_by_remedy;
create index steps_by_day on steps (watch, act_by, weight desc, job, ordinal, lead);
create index steps_of_either_kind_by_day on steps (act_by, weight desc, job, ordinal);
create index steps_by_customer on steps (customer, watch, act_by, weight desc, lead);
create index steps_by_county on steps (county, watch, act_by, weight desc, lead);
create index steps_by_person on steps (person, watch, act_by, weight desc, lead);
create index steps_by_remedy on steps (remedy, watch, act_by, weight desc, lead);
