-- Which step is asked where a test is led, and since which second: for whoever looks over the shop. No evidence, as all of a lease.
alter table lease add column ${unlessThere} asked text not null default '';
alter table lease add column ${unlessThere} asked_second bigint not null default 0;
