-- Units, the lists they are made to, and what happened in each test of them. Rows are only ever added.
create table if not exists harness (
  digest varchar(64) not null primary key,
  title text not null,
  drawing text not null,
  revision text not null,
  file text not null,
  folder integer not null
);

-- The files of a list as they were, so that a unit can be checked years later.
create table if not exists harness_part (
  harness varchar(64) not null references harness (digest),
  number integer not null,
  name text not null,
  content ${bytes} not null,
  primary key (harness, number)
);

-- The key is the digest of the serial number as it is compared: a number may be longer than an index takes.
create table if not exists unit (
  unit_key varchar(64) not null,
  harness varchar(64) not null references harness (digest),
  serial text not null,
  primary key (unit_key, harness)
);

-- For the siblings of a unit.
create index if not exists unit_of_harness on unit (harness, unit_key);

create table if not exists session (
  id varchar(36) not null primary key,
  unit_key varchar(64) not null,
  harness varchar(64) not null,
  number integer not null,
  station text not null,
  who text not null,
  started text not null,
  file text not null,
  digest varchar(64) not null,
  program text not null,
  added text not null,
  foreign key (unit_key, harness) references unit (unit_key, harness),
  unique (unit_key, harness, number)
);

create table if not exists entry (
  session varchar(36) not null references session (id),
  seq integer not null,
  at text not null,
  who text not null,
  kind varchar(20) not null,
  body text not null,
  previous ${bytes} not null,
  hash ${bytes} not null,
  primary key (session, seq)
) ${clustered};

-- For the list of units: one entry in hundreds is a verdict.
create index if not exists verdict on entry (session) where kind = 'verdict';
