-- Where houses, benches and known trouble spots lie: metres from the left and from the top, as seen
-- from above. A house or bench without a row here is laid out from its bays and positions.

create table house_place (
    nursery text not null,
    house text not null,
    x double precision not null,
    y double precision not null,
    length double precision not null,
    width double precision not null,
    primary key (nursery, house),
    foreign key (nursery, house) references house (nursery, code)
);

create table bench_place (
    nursery text not null,
    bench text not null,
    name text not null,
    x double precision not null,
    y double precision not null,
    length double precision not null,
    width double precision not null,
    primary key (nursery, bench),
    foreign key (nursery, bench) references bench (nursery, code)
);

create table hot_spot (
    nursery text not null,
    code text not null,
    house text not null,
    bench text,
    kind text not null,
    x double precision not null,
    y double precision not null,
    note text not null,
    primary key (nursery, code),
    foreign key (nursery, house) references house (nursery, code),
    foreign key (nursery, bench) references bench (nursery, code)
);
