-- A migration that takes minutes, for the test that kills it half way.
create table half_made (number bigint, text text);
insert into half_made (number, text)
with recursive numbers (i) as (select 1 union all select i + 1 from numbers where i < 100000000)
select i, 'some text that fills the file' from numbers;
