-- What the technical director writes, and what is published and adopted.

create table pattern (
  club_id uuid not null references club,
  pattern_id uuid not null,
  title text not null check (char_length(title) between 1 and 120),
  format_id text not null,
  version integer not null check (version > 0),
  retired_at timestamptz,
  primary key (club_id, pattern_id)
);

create table pattern_version (
  club_id uuid not null,
  pattern_id uuid not null,
  version integer not null check (version > 0),
  doc jsonb not null,
  doc_schema smallint not null check (doc_schema > 0),
  author_id uuid not null,
  primary key (club_id, pattern_id, version),
  foreign key (club_id, pattern_id) references pattern,
  foreign key (club_id, author_id) references membership
);

create table curriculum (
  club_id uuid not null references club,
  curriculum_id uuid not null,
  name text not null check (char_length(name) between 1 and 120),
  age_group text not null,
  primary key (club_id, curriculum_id)
);

-- One draft a curriculum: the key says so. Stages and outlines stand in the document, patterns by id.
create table draft (
  club_id uuid not null,
  curriculum_id uuid not null,
  version integer not null check (version > 0),
  based_on integer,
  doc jsonb not null,
  doc_schema smallint not null check (doc_schema > 0),
  primary key (club_id, curriculum_id),
  foreign key (club_id, curriculum_id) references curriculum
);

create table curriculum_version (
  club_id uuid not null,
  curriculum_id uuid not null,
  number integer not null check (number > 0),
  -- Canonical bytes (RFC 8785); patterns, settings and profiles by value.
  content text not null,
  content_hash bytea not null,
  check_version text not null,
  published_by uuid not null,
  published_at timestamptz not null,
  entry_id uuid not null,
  offered boolean not null default true,
  withdrawn_reason text,
  primary key (club_id, curriculum_id, number),
  foreign key (club_id, curriculum_id) references curriculum,
  foreign key (club_id, published_by) references membership,
  -- No effect without its entry in the record book.
  foreign key (club_id, entry_id) references ledger_entry (club_id, entry_id) deferrable initially deferred,
  check (content_hash = sha256(convert_to(content, 'UTF8'))),
  check (withdrawn_reason is null or not offered)
);
create unique index one_offered on curriculum_version (club_id, curriculum_id) where offered;

-- A version without a row here says "signature pending"; only the signer adds one.
create table version_signature (
  club_id uuid not null,
  curriculum_id uuid not null,
  number integer not null,
  kid text not null,
  jws text not null,
  primary key (club_id, curriculum_id, number, kid),
  foreign key (club_id, curriculum_id, number) references curriculum_version
);

-- A stage keeps its id in every version: planned and done, readiness and planning join on it.
create table stage (
  club_id uuid not null,
  stage_id uuid not null,
  curriculum_id uuid not null,
  title text not null check (char_length(title) between 1 and 120),
  primary key (club_id, stage_id),
  foreign key (club_id, curriculum_id) references curriculum
);

create table version_stage (
  club_id uuid not null,
  curriculum_id uuid not null,
  number integer not null,
  stage_id uuid not null,
  ordinal smallint not null check (ordinal >= 0),
  -- The rung of the ladder: none, poles, shadow, then one to six live opponents.
  pressure smallint not null check (pressure between 0 and 8),
  primary key (club_id, curriculum_id, number, stage_id),
  unique (club_id, curriculum_id, number, ordinal),
  foreign key (club_id, curriculum_id, number) references curriculum_version,
  foreign key (club_id, stage_id) references stage
);

-- A team may change its mind on one day, and both facts stay: in force is the greatest (from_date, ordinal) with
-- from_date not after the day. The ordinal counts a team's adoptions; its unique key stops two at once.
create table adoption (
  club_id uuid not null,
  adoption_id uuid not null,
  team_id uuid not null,
  ordinal integer not null check (ordinal > 0),
  from_date date not null,
  curriculum_id uuid not null,
  number integer not null,
  adopted_by uuid not null,
  entry_id uuid not null,
  primary key (club_id, adoption_id),
  unique (club_id, team_id, ordinal),
  foreign key (club_id, team_id) references team,
  foreign key (club_id, curriculum_id, number) references curriculum_version,
  foreign key (club_id, adopted_by) references membership,
  foreign key (club_id, entry_id) references ledger_entry (club_id, entry_id) deferrable initially deferred
);
create index adoption_in_force on adoption (club_id, team_id, from_date desc, ordinal desc);

-- One row a stage and training date. Re-planning closes future rows and adds new ones; rows of past dates stay.
create table stage_planned (
  club_id uuid not null,
  planned_id uuid not null,
  season_id uuid not null,
  team_id uuid not null,
  date_id uuid not null,
  week date not null check (extract(isodow from week) = 1),
  stage_id uuid not null,
  minutes smallint not null check (minutes > 0),
  -- Part of the first plan of the season, which the comparison keeps showing.
  first boolean not null,
  closed_at timestamptz,
  primary key (club_id, planned_id),
  foreign key (club_id, season_id) references season,
  foreign key (club_id, team_id) references team,
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, stage_id) references stage
);
create unique index stage_planned_once on stage_planned (club_id, team_id, date_id, stage_id) where closed_at is null;
create index planned_cover on stage_planned (club_id, season_id, team_id, week) include (stage_id, minutes, first)
  where closed_at is null or first;
