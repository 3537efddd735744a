-- Children. This list of columns is the whole of what may be kept about a child: a sealed short name, a shirt, a team,
-- attendance, two positions, willingness in goal, the strong foot. No birth date, photo, address, contact or grade.

create table player (
  club_id uuid not null,
  player_id uuid not null,
  team_id uuid not null,
  shirt smallint check (shirt between 0 and 999),
  -- AES-256-GCM under the child's own key; null once erased.
  name_sealed bytea,
  home text check (char_length(home) between 1 and 12),
  stretch text check (char_length(stretch) between 1 and 12),
  goalkeeper text not null check (goalkeeper in ('yes', 'sometimes', 'no')),
  foot text not null check (foot in ('left', 'right', 'both')),
  version integer not null default 1 check (version > 0),
  left_at date,
  primary key (club_id, player_id),
  foreign key (club_id, team_id) references team,
  check (home is null or stretch is null or home <> stretch)
);
create unique index shirt_once on player (club_id, team_id, shirt) where left_at is null;

-- The child's key, wrapped by a key that is never in the database: deleting this row erases the name in backups too.
create table subject_key (
  club_id uuid not null,
  player_id uuid not null,
  wrapped_key bytea not null,
  primary key (club_id, player_id),
  foreign key (club_id, player_id) references player
);

-- One mark for a child and a date; the earlier one kept by the order in which the server heard of it.
create table attendance (
  club_id uuid not null,
  date_id uuid not null,
  player_id uuid not null,
  came boolean not null,
  from_minute smallint check (from_minute >= 0),
  to_minute smallint check (to_minute >= 0),
  operation_id uuid not null,
  received_at timestamptz not null default now(),
  primary key (club_id, date_id, player_id),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, player_id) references player,
  check (from_minute <= to_minute)
);

-- Marks that a later one replaced; they expire with the others.
create table attendance_past (
  club_id uuid not null,
  date_id uuid not null,
  player_id uuid not null,
  operation_id uuid not null,
  came boolean not null,
  from_minute smallint check (from_minute >= 0),
  to_minute smallint check (to_minute >= 0),
  received_at timestamptz not null,
  primary key (club_id, date_id, player_id, operation_id),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, player_id) references player
);

-- Which positions a child has had, so that line-ups even out over weeks.
create table player_rounds (
  club_id uuid not null,
  date_id uuid not null,
  player_id uuid not null,
  position text not null check (char_length(position) between 1 and 12),
  side text not null check (side in ('left', 'right')),
  rounds smallint not null check (rounds >= 0),
  primary key (club_id, date_id, player_id, position, side),
  foreign key (club_id, date_id) references training_date,
  foreign key (club_id, player_id) references player
);
