-- The first tables. One dialect for SQLite and PostgreSQL: text, bigint, integer, double precision.
-- Instants are UTC text of fixed width with microseconds, days are ISO text, flags are 0 or 1.
-- Every table of a site carries the nursery, so that one client's data never meet another's.

create table nursery (
    slug text primary key,
    name text not null,
    zone text not null,
    language text not null
);

create table house (
    nursery text not null references nursery (slug),
    code text not null,
    name text not null,
    area_m2 double precision,
    position integer not null,
    primary key (nursery, code)
);

create table bench (
    nursery text not null,
    code text not null,
    house text not null,
    bay text not null,
    position integer not null,
    primary key (nursery, code),
    foreign key (nursery, house) references house (nursery, code)
);

create table crop_lot (
    nursery text not null references nursery (slug),
    code text not null,
    crop text not null,
    variety text not null,
    supplier text,
    delivered_on text,
    edible integer not null,
    primary key (nursery, code)
);

-- A bench has occupancies, never "the crop of the bench".
create table occupancy (
    nursery text not null,
    bench text not null,
    crop_lot text not null,
    from_day text not null,
    to_day text,
    plants double precision,
    growing_points_per_plant double precision,
    estimated_on text,
    primary key (nursery, bench, crop_lot, from_day),
    foreign key (nursery, bench) references bench (nursery, code),
    foreign key (nursery, crop_lot) references crop_lot (nursery, code)
);

create table plant_move (
    nursery text not null references nursery (slug),
    moved_on text not null,
    from_bench text not null,
    to_bench text not null,
    crop_lot text not null,
    plants integer not null,
    primary key (nursery, moved_on, from_bench, to_bench, crop_lot)
);

create table pest (
    code text primary key,
    eppo_code text,
    scientific_name text not null,
    common_name text not null,
    natural_enemy integer not null,
    position integer not null
);

create table life_stage (
    pest text not null references pest (code),
    code text not null,
    stage_group text not null,
    mark text not null,
    position integer not null,
    primary key (pest, code)
);

create table reader (
    nursery text not null references nursery (slug),
    code text not null,
    role text not null,
    language text not null,
    active integer not null,
    primary key (nursery, code)
);

-- Dated settings: the newest recorded one that holds on a day counts; old ones are kept.
create table setting (
    nursery text not null references nursery (slug),
    name text not null,
    value text not null,
    holds_from text not null,
    set_by text not null,
    reason text not null,
    recorded_at text not null,
    primary key (nursery, name, recorded_at)
);

create table action_threshold (
    nursery text not null references nursery (slug),
    pest text not null references pest (code),
    stage_group text not null,
    density double precision not null,
    set_on text not null,
    set_by text not null,
    reason text not null,
    source text not null,
    recorded_at text not null,
    primary key (nursery, pest, stage_group, recorded_at)
);

create table protocol_version (
    nursery text not null references nursery (slug),
    holds_from text not null,
    freeze_hours double precision not null,
    read_within_hours double precision not null,
    growing_points_per_jar integer not null,
    shake_seconds_least integer not null,
    shake_seconds_most integer not null,
    filter_cells integer not null,
    note text not null,
    recorded_at text not null,
    primary key (nursery, recorded_at)
);

-- Extraction efficiency by fluid ('extraction', subject = fluid) and sensitivity by reader
-- ('reader', subject = reader code), as adopted by the site.
create table detection (
    nursery text not null references nursery (slug),
    kind text not null,
    subject text not null,
    pest text not null references pest (code),
    stage_group text not null,
    found double precision,
    known double precision,
    value double precision,
    holds_from text not null,
    withdrawn_on text,
    source text not null,
    recorded_at text not null,
    primary key (nursery, kind, subject, pest, stage_group, recorded_at)
);

-- The only source of what happened to samples. Rows are added, never changed.
create table event (
    position bigint primary key,
    nursery text not null references nursery (slug),
    device text not null,
    sequence bigint not null,
    sample text not null,
    at text not null,
    person text not null,
    batch text,
    deed text not null,
    chain text not null,
    unique (device, sequence)
);

create index event_of_sample on event (nursery, sample);
create index event_of_batch on event (batch);

-- Read model: the fold of the events, kept in the same transaction; verify compares the two.
create table sample (
    nursery text not null references nursery (slug),
    code text not null,
    method text not null,
    purpose text not null,
    role text not null,
    state text not null,
    collected_on text,
    house text,
    bench text,
    crop_lot text,
    crop text,
    variety text,
    sampling_units double precision not null,
    fluid text,
    fill text,
    shake_seconds integer,
    rinses integer,
    condition text,
    cut_at text,
    washed_at text,
    freezer_in_at text,
    freezer_out_at text,
    read_at text,
    reader text,
    cells_read double precision not null,
    cells_readable double precision not null,
    cells_obscured integer not null,
    minutes double precision,
    known integer,
    recount_of text,
    attributes text not null,
    open_questions integer not null,
    primary key (nursery, code)
);

create index sample_by_day on sample (nursery, method, collected_on);
create index sample_in_order on sample (nursery, collected_on, code);
create index sample_with_questions on sample (nursery, code) where open_questions > 0;
create index sample_by_state on sample (nursery, state, collected_on);

create table sample_count (
    nursery text not null,
    sample text not null,
    pest text not null,
    life_stage text not null,
    individuals bigint not null,
    primary key (nursery, sample, pest, life_stage),
    foreign key (nursery, sample) references sample (nursery, code)
);

create index sample_count_by_pest on sample_count (nursery, pest, life_stage, sample);

create table import_batch (
    id text primary key,
    nursery text not null references nursery (slug),
    imported_at text not null,
    person text not null,
    file_name text not null,
    fingerprint text not null,
    header text not null,
    mapping text not null,
    rows_new integer not null,
    rows_same integer not null,
    rows_changed integer not null,
    taken_back_at text,
    taken_back_by text,
    taken_back_reason text
);

-- Which row of which sheet said what: by its key, and by its place and whole text without a code.
create table import_row (
    batch text not null references import_batch (id),
    place integer not null,
    part integer not null,
    nursery text not null,
    row_key text not null,
    row_text text not null,
    sample text not null,
    pest text not null,
    life_stage text not null,
    device text not null,
    sequence bigint not null,
    primary key (batch, place, part)
);

create index import_row_by_key on import_row (nursery, row_key);

create table column_mapping (
    nursery text not null references nursery (slug),
    header text not null,
    mapping text not null,
    used_at text not null,
    primary key (nursery, header)
);

create table planned_jars (
    nursery text not null references nursery (slug),
    day text not null,
    bench text not null,
    method text not null,
    samples integer not null,
    purpose text not null,
    position integer not null,
    primary key (nursery, day, bench, method)
);

-- Applications are never changed: a wrong one is withdrawn with a reason and written anew.
create table application (
    nursery text not null references nursery (slug),
    id text not null,
    house text not null,
    started_at text not null,
    ended_at text,
    amount text not null,
    applicator text not null,
    note text not null,
    recorded_at text not null,
    withdrawn_at text,
    withdrawn_by text,
    withdrawn_reason text,
    primary key (nursery, id)
);

create index application_by_time on application (nursery, started_at);

create table application_bench (
    nursery text not null,
    application text not null,
    bench text not null,
    primary key (nursery, application, bench),
    foreign key (nursery, application) references application (nursery, id)
);

create table application_product (
    nursery text not null,
    application text not null,
    product text not null,
    registration_number text,
    mode_of_action_groups text not null,
    reentry_hours double precision,
    label_most_uses integer,
    label_least_days integer,
    position integer not null,
    primary key (nursery, application, product),
    foreign key (nursery, application) references application (nursery, id)
);

create table beneficial_release (
    nursery text not null references nursery (slug),
    released_on text not null,
    organism text not null,
    place text not null,
    amount text not null,
    primary key (nursery, released_on, organism, place)
);

create table temperature (
    nursery text not null references nursery (slug),
    house text not null,
    sensor text not null,
    at text not null,
    celsius double precision not null,
    unit_delivered text not null,
    primary key (nursery, house, at, sensor)
);
