-- Phones and tablets that were let in, each to the pages of one nursery. Of its secret a hash only.
create table device (
    nursery text not null references nursery (slug),
    id text not null,
    name text not null,
    person text not null,
    plain integer not null,
    secret_hash text not null,
    let_in_at text not null,
    last_seen_at text not null,
    revoked_at text,
    primary key (nursery, id),
    unique (secret_hash)
);

-- Who has the secret may read the calendar. It is shown again, so that it is kept as it is.
create table calendar_feed (
    nursery text not null references nursery (slug),
    token text not null,
    opened_at text not null,
    closed_at text,
    primary key (token)
);

-- What calendars were told last: an entry that changed or no longer holds says so under its name.
create table calendar_entry (
    nursery text not null references nursery (slug),
    about text not null,
    uid text not null,
    sequence integer not null,
    changed_at text not null,
    cancelled integer not null,
    starts_at text not null,
    ends_at text not null,
    summary text not null,
    description text not null,
    place text not null,
    category text not null,
    primary key (nursery, about)
);
