-- Pictures of kept specimens: the bytes in base 64, told apart by what they hold.
create table photo (
    nursery text not null references nursery (slug),
    sha256 text not null,
    media_type text not null,
    content text not null,
    taken_at text,
    primary key (nursery, sha256)
);

-- Filters on which insects were placed, to learn what readers find. Retired ones stay on record.
create table seeded_filter (
    nursery text not null references nursery (slug),
    code text not null,
    name text not null,
    placed text not null,
    made_on text not null,
    made_by text not null,
    retired_on text,
    recorded_at text not null,
    primary key (nursery, code)
);
