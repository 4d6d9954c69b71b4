-- A migration that fails half way, for the test that nothing of it stays.
create table half_made (name text);
insert into no_such_table (name) values ('x');
