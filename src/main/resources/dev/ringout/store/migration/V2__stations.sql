-- What a station carries into every test. The last of a name is in force; those before it stay.
create table if not exists station (
  name varchar(200) not null,
  number integer not null,
  added text not null,
  body text not null,
  primary key (name, number)
);
