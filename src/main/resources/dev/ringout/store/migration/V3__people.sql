-- Who may sign in and as what, and who came in. Rows are only ever added: the last of a person is in force, and each
-- row's hash is over the one before.
create table if not exists people (
  seq integer not null primary key,
  at text not null,
  who text not null,
  kind varchar(20) not null,
  body text not null,
  previous ${bytes} not null,
  hash ${bytes} not null
);

-- Who may sign in is asked with every request; of those who came in there are many more.
create index if not exists of_people on people (seq) 
  where kind in ('added', 'roles', 'passphrase', 'withdrawn', 'out_everywhere');
