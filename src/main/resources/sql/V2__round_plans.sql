-- Rounds with their labelled jars. A round is never deleted: it is withdrawn, with a reason.

create table round_plan (
    nursery text not null references nursery (slug),
    id text not null,
    day text not null,
    method text not null,
    question text not null,
    seed bigint not null,
    planned_by text not null,
    planned_at text not null,
    withdrawn_at text,
    withdrawn_by text,
    withdrawn_reason text,
    primary key (nursery, id)
);

create index round_plan_by_day on round_plan (nursery, day, id);

-- What was asked and assumed, by name.
create table round_number (
    nursery text not null,
    round text not null,
    name text not null,
    value text not null,
    primary key (nursery, round, name),
    foreign key (nursery, round) references round_plan (nursery, id)
);

-- A jar belongs to one round; a control has an empty house and bench.
create table round_jar (
    nursery text not null,
    sample text not null,
    round text not null,
    walk integer not null,
    house text not null,
    bench text not null,
    crop_lot text,
    variety text,
    purpose text not null,
    role text not null,
    spot_along double precision,
    spot_across double precision,
    growing_points integer not null,
    primary key (nursery, sample),
    foreign key (nursery, round) references round_plan (nursery, id)
);

create index round_jar_by_round on round_jar (nursery, round, walk);
