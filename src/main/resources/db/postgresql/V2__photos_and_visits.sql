-- Photos of boats: what is listed, and the pixels. One file for each database, because they name long byte rows differently.
create table photo (
    id           uuid primary key,
    candidate_id uuid                     not null references shortlist_entry (id) on delete cascade,
    check_id     varchar(200),
    caption      varchar(300),
    added_at     timestamp with time zone not null,
    deleted_at   timestamp with time zone,
    width        integer                  not null,
    height       integer                  not null,
    media_type   varchar(50)              not null,
    size_bytes   integer                  not null,
    picture      bytea                     not null,
    thumbnail    bytea                     not null
);

create index photo_by_candidate on photo (candidate_id, added_at);

-- Notes of the visit to a boat as a JSON document.
create table visit (
    candidate_id uuid primary key references shortlist_entry (id) on delete cascade,
    document     text not null
);
