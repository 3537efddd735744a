-- The evening and what was coached: inserted, never edited; a correction supersedes.

create table plan (
  club_id uuid not null,
  plan_id uuid not null,
  date_id uuid not null,
  curriculum_id uuid,
  number integer,
  planner smallint not null check (planner > 0),
  inputs_hash bytea not null check (octet_length(inputs_hash) = 32),
  doc jsonb not null,
  author_id uuid not null,
  received_at timestamptz not null default now(),
  primary key (club_id, plan_id),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, curriculum_id, number) references curriculum_version,
  foreign key (club_id, author_id) references membership,
  check ((curriculum_id is null) = (number is null))
);
create index plan_latest on plan (club_id, date_id, received_at desc);

-- One run of a pattern. The key is the operation's id, so two phones merge by union; an undo may arrive first, and so
-- names the other run without a foreign key.
create table attempt (
  club_id uuid not null,
  attempt_id uuid not null,
  date_id uuid not null,
  stage_id uuid not null,
  side text check (side in ('left', 'right')),
  success boolean not null,
  undoes uuid,
  device_at timestamptz,
  primary key (club_id, attempt_id),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, stage_id) references stage
);
create index attempt_of_date on attempt (club_id, date_id);

-- The key is the operation's id. A plan may arrive after the report on it, and so is named without a foreign key.
create table record (
  club_id uuid not null,
  record_id uuid not null,
  date_id uuid not null,
  team_id uuid not null,
  season_id uuid not null,
  week date not null check (extract(isodow from week) = 1),
  plan_id uuid,
  turnout smallint not null check (turnout >= 0),
  guests smallint not null default 0 check (guests >= 0),
  minutes smallint not null check (minutes >= 0),
  author_id uuid not null,
  confirmed_by uuid,
  reported_late boolean not null,
  supersedes uuid,
  standing text not null check (standing in ('stands', 'superseded', 'rival')),
  doc jsonb not null,
  entry_id uuid not null,
  primary key (club_id, record_id),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, team_id) references team,
  foreign key (club_id, season_id) references season,
  foreign key (club_id, author_id) references membership,
  foreign key (club_id, confirmed_by) references membership,
  foreign key (club_id, supersedes) references record,
  foreign key (club_id, entry_id) references ledger_entry (club_id, entry_id) deferrable initially deferred,
  check (supersedes <> record_id)
);
create unique index one_standing on record (club_id, date_id) where standing = 'stands';
-- Chains, no forks.
create unique index one_successor on record (club_id, supersedes) where supersedes is not null;
create index record_list on record (club_id, season_id, team_id, week);

create table stage_done (
  club_id uuid not null,
  record_id uuid not null,
  stage_id uuid not null,
  season_id uuid not null,
  team_id uuid not null,
  week date not null check (extract(isodow from week) = 1),
  pressure smallint not null check (pressure between 0 and 8),
  minutes smallint not null check (minutes >= 0),
  rounds_left smallint check (rounds_left >= 0),
  rounds_right smallint check (rounds_right >= 0),
  attempts_left smallint check (attempts_left >= 0),
  attempts_right smallint check (attempts_right >= 0),
  successes_left smallint check (successes_left between 0 and attempts_left),
  successes_right smallint check (successes_right between 0 and attempts_right),
  stands boolean not null,
  primary key (club_id, record_id, stage_id),
  foreign key (club_id, record_id) references record,
  foreign key (club_id, stage_id) references stage,
  check ((successes_left is null) = (attempts_left is null)),
  check ((successes_right is null) = (attempts_right is null))
)
-- Vacuumed early, because planned and done is read from the index alone while the visibility map is fresh.
with (autovacuum_vacuum_insert_scale_factor = 0.01, autovacuum_vacuum_scale_factor = 0.02);
create index coverage on stage_done (club_id, season_id, team_id, week)
  include (stage_id, minutes, rounds_left, rounds_right, record_id) where stands;
create index readiness on stage_done (club_id, team_id, stage_id, week)
  include (attempts_left, attempts_right, successes_left, successes_right) where stands;

create table plan_change (
  club_id uuid not null,
  plan_change_id uuid not null,
  record_id uuid not null,
  stage_id uuid,
  kind text not null,
  note_id uuid,
  answer text,
  answered_by uuid,
  primary key (club_id, plan_change_id),
  foreign key (club_id, record_id) references record,
  foreign key (club_id, stage_id) references stage,
  foreign key (club_id, answered_by) references membership,
  check ((answer is null) = (answered_by is null))
);
create index change_unanswered on plan_change (club_id, stage_id) where answer is null;

-- Free text never enters the record book: the entry holds the keyed hash, and erasing deletes text and salt.
create table note (
  club_id uuid not null references club,
  note_id uuid not null,
  subject_id uuid not null,
  salt bytea,
  text text,
  mac bytea not null check (octet_length(mac) = 32),
  erased_at timestamptz,
  primary key (club_id, note_id),
  check ((salt is null) = (erased_at is not null) and (text is null) = (erased_at is not null))
);
create index note_subject on note (club_id, subject_id);
