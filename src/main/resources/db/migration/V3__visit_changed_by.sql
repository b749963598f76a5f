-- Who saved the notes of a visit last, so that somebody whose edit met theirs can be told.
alter table visit add column changed_by varchar(200) default '' not null;
