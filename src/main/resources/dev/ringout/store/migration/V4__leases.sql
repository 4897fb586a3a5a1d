-- Who leads a test at a station, and until when nobody may take that over. No evidence: in no hash, in no copy, and the
-- one table whose rows are changed. The fence grows whenever somebody else leads there; who has an earlier one writes
-- nothing any more.
create table if not exists lease (
  session varchar(36) not null references session (id),
  station text not null,
  fence integer not null,
  who text not null,
  until_second bigint not null,
  primary key (session, station)
);
