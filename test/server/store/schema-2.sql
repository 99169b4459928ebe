-- A database as version 2 of the schema left it, with one of everything in it. Both databases read it.
create table schema_version (version integer primary key, taken_at text not null);
create table setting (name text primary key, value text not null);
create table office (id text primary key, name text not null, last_job_number integer default 0 not null, made_at text not null);
create table job (
  id text primary key, office_id text not null references office (id), number integer not null, version integer not null,
  last_check_number integer default 0 not null, name text not null, client text not null, address text not null,
  reference text not null, prepared_by text not null, checked_by text not null, edition text not null, authority text not null,
  notes text not null, is_archived integer not null, is_deleted integer not null, made_at text not null, changed_at text not null,
  name_key text not null, client_key text not null, search_key text not null,
  constraint job_number_once unique (office_id, number)
);
create index job_by_changed_at on job (office_id, is_deleted, is_archived, changed_at, id);
create index job_by_name_key on job (office_id, is_deleted, is_archived, name_key, id);
create index job_by_client_key on job (office_id, is_deleted, is_archived, client_key, id);
create index job_by_number on job (office_id, is_deleted, is_archived, number, id);
create table job_check (
  id text primary key, office_id text not null references office (id), job_id text not null references job (id),
  number integer not null, place integer not null, version integer not null, form text not null, element text not null,
  title text not null, standing text not null, governs text not null, used double precision, tool text not null,
  is_deleted integer not null, last_revision integer not null, editor text not null, turn double precision not null,
  made_at text not null, changed_at text not null, changed_by text not null,
  constraint check_number_once unique (job_id, number)
);
create index check_by_place on job_check (job_id, is_deleted, place);
create table revision (
  check_id text not null references job_check (id), office_id text not null references office (id), number integer not null,
  version integer not null, form text not null, standing text not null, changed text not null, reason text not null,
  editor text not null, made_at text not null, saved_at text not null, saved_by text not null,
  constraint revision_once primary key (check_id, number)
);
create table person (
  id text primary key, office_id text not null references office (id), name text not null, sign_in_name text not null unique,
  password text not null, role text not null, is_active integer default 1 not null, made_at text not null
);
create index person_by_office on person (office_id, name);
create table session (
  key_hash text primary key, person_id text not null references person (id), office_id text not null references office (id),
  made_at text not null, seen_at text not null
);
create index session_by_person on session (person_id);
create table share_link (
  id text primary key, key_hash text not null unique, office_id text not null references office (id),
  job_id text not null references job (id), label text not null, made_at text not null, made_by text not null,
  ends_at text not null, is_revoked integer not null
);
create index share_link_by_job on share_link (job_id, made_at);
insert into schema_version values (1, '2026-01-05T08:00:00.000Z'), (2, '2026-02-02T08:00:00.000Z');
insert into setting values ('token secret', 'a secret of old');
insert into office values ('here', 'Here', 7, '2026-01-05T08:00:00.000Z');
insert into job values (
  'job-7', 'here', 7, 3, 2, 'House by the mill', 'A. Client', '3 Long Lane', 'K-17', 'A. Nyone', 'S. O. Else',
  'Building code of 2024', 'The town', 'Mind the cat', 0, 0, '2026-01-05T08:00:00.000Z', '2026-01-06T08:00:00.000Z',
  'house by the mill', 'a. client', 'house by the mill / a. client / 3 long lane / k-17 / job 7'
);
insert into job_check values (
  'check-2', 'here', 'job-7', 2, 2, 4, 'element=bracket-shelf&title=Shelf', 'bracket-shelf', 'Shelf', 'unfinished', '', null,
  '0.1.0', 0, 1, '', 0, '2026-01-05T08:00:00.000Z', '2026-01-06T08:00:00.000Z', 'A. Nyone'
);
insert into revision values (
  'check-2', 'here', 1, 4, 'element=bracket-shelf&title=Shelf', 'unfinished', '[]', '', '', '2026-01-05T08:00:00.000Z',
  '2026-01-06T08:00:00.000Z', 'A. Nyone'
);
insert into person values (
  'person-1', 'here', 'A. Nyone', 'a.nyone@here.example', 'kept', 'owner', 1, '2026-02-02T08:00:00.000Z'
);
insert into session values ('digest-1', 'person-1', 'here', '2026-02-02T08:00:00.000Z', '2026-02-02T08:00:00.000Z');
insert into share_link values (
  'link-1', 'digest-2', 'here', 'job-7', 'A. Client', '2026-02-02T08:00:00.000Z', 'A. Nyone', '2030-01-01T00:00:00.000Z', 0
);
