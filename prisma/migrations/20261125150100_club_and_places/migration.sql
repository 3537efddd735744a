-- The club, its people, teams, places and dates. club_id comes first in every key, unique index and foreign key.

create table club (
  club_id uuid primary key,
  name text not null check (char_length(name) between 1 and 120),
  zone text not null,
  settings jsonb not null,
  -- An invented club: everything in it is an example, and screens say so.
  demo boolean not null default false,
  version integer not null default 1 check (version > 0)
);

create table season (
  club_id uuid not null references club,
  season_id uuid not null,
  name text not null check (char_length(name) between 1 and 120),
  first_day date not null,
  last_day date not null,
  version integer not null default 1 check (version > 0),
  primary key (club_id, season_id),
  check (first_day <= last_day)
);
create unique index season_name on season (club_id, name);

create table team (
  club_id uuid not null,
  team_id uuid not null,
  season_id uuid not null,
  name text not null check (char_length(name) between 1 and 120),
  age_group text not null,
  category text not null,
  format_id text not null,
  helpers smallint not null default 1 check (helpers between 0 and 20),
  version integer not null default 1 check (version > 0),
  retired_at timestamptz,
  primary key (club_id, team_id),
  foreign key (club_id, season_id) references season
);
create unique index team_name on team (club_id, season_id, name) where retired_at is null;

create table membership (
  club_id uuid not null references club,
  member_id uuid not null,
  account_id uuid not null,
  display_name text not null check (char_length(display_name) between 1 and 80),
  version integer not null default 1 check (version > 0),
  ended_at timestamptz,
  primary key (club_id, member_id)
);
create unique index one_membership on membership (club_id, account_id) where ended_at is null;

create table member_role (
  club_id uuid not null,
  member_role_id uuid not null,
  member_id uuid not null,
  role text not null check (role in ('administrator', 'director', 'coach', 'assistant', 'auditor')),
  -- A coach or an assistant serves one team in each of their roles; the others serve the whole club.
  team_id uuid,
  primary key (club_id, member_role_id),
  foreign key (club_id, member_id) references membership,
  foreign key (club_id, team_id) references team,
  check ((team_id is not null) = (role in ('coach', 'assistant')))
);
create unique index member_role_once on member_role
  (club_id, member_id, role, coalesce(team_id, '00000000-0000-0000-0000-000000000000'));

-- A one-time way in. The browser of the person who makes it draws the secret and sends only its hash, so no stored
-- answer ever holds one.
create table sign_in_link (
  club_id uuid not null,
  link_id uuid not null,
  member_id uuid not null,
  token_hash bytea not null check (octet_length(token_hash) = 32),
  -- Nobody made the first one of a club: the machine did.
  made_by uuid,
  expires_at timestamptz not null,
  used_at timestamptz,
  revoked_at timestamptz,
  primary key (club_id, link_id),
  unique (club_id, token_hash),
  foreign key (club_id, member_id) references membership,
  foreign key (club_id, made_by) references membership,
  check (used_at is null or revoked_at is null)
);
-- A new link ends the old one.
create unique index one_live_link on sign_in_link (club_id, member_id) where used_at is null and revoked_at is null;

-- A practice space as somebody with a tape found it: any rectangle, also wider than long.
create table space (
  club_id uuid not null references club,
  space_id uuid not null,
  name text not null check (char_length(name) between 1 and 120),
  venue text not null check (char_length(venue) between 1 and 120),
  length_mm integer not null check (length_mm > 0),
  width_mm integer not null check (width_mm > 0),
  format_id text not null,
  -- Which lines, goals and landmarks are there, and how they show.
  doc jsonb not null,
  version integer not null default 1 check (version > 0),
  retired_at timestamptz,
  primary key (club_id, space_id)
);
create unique index space_name on space (club_id, venue, name) where retired_at is null;

create table equipment (
  club_id uuid not null references club,
  -- The word club, or the id of the team that owns it.
  owner_key text not null check (owner_key = 'club' or owner_key ~ '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$'),
  kind text not null check (kind in ('cone', 'pole', 'small-goal', 'ball', 'bib')),
  count smallint not null check (count >= 0),
  primary key (club_id, owner_key, kind)
);

create table training_slot (
  club_id uuid not null,
  slot_id uuid not null,
  team_id uuid not null,
  space_id uuid,
  -- Monday is 1, as ISO 8601 counts.
  weekday smallint not null check (weekday between 1 and 7),
  local_start time not null,
  minutes smallint not null check (minutes between 1 and 600),
  valid_from date not null,
  valid_to date not null,
  version integer not null default 1 check (version > 0),
  primary key (club_id, slot_id),
  foreign key (club_id, team_id) references team,
  foreign key (club_id, space_id) references space,
  check (valid_from <= valid_to)
);

-- Dates are rows, not computed: cancelled and moved ones need an identity, and plans and records hang on them.
create table training_date (
  club_id uuid not null,
  date_id uuid not null,
  team_id uuid not null,
  season_id uuid not null,
  slot_id uuid,
  space_id uuid,
  starts_at timestamptz not null,
  ends_at timestamptz not null,
  local_date date not null,
  -- The Monday of its week in the club's zone.
  week date not null,
  state text not null check (state in ('on', 'cancelled', 'moved')),
  sequence integer not null default 0 check (sequence >= 0),
  primary key (club_id, date_id),
  foreign key (club_id, team_id) references team,
  foreign key (club_id, season_id) references season,
  foreign key (club_id, slot_id) references training_slot,
  foreign key (club_id, space_id) references space,
  check (starts_at < ends_at),
  check (extract(isodow from week) = 1 and local_date - week between 0 and 6)
);
create unique index slot_once_a_day on training_date (club_id, slot_id, local_date) where state = 'on';
-- The next session of a team is the first row of this index that ends after now.
create index next_date on training_date (club_id, team_id, ends_at) include (date_id, starts_at) where state = 'on';
